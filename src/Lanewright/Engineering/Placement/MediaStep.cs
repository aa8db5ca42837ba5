using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Placement;

/// <summary>A range of lengths over which links of a kind are made in one way, and what it costs there.</summary>
/// <param name="From">The shortest length made so; above the longest of the step before.</param>
/// <param name="To">The longest, as far as was looked.</param>
/// <param name="Medium">What carries the link.</param>
/// <param name="Cable">The cable.</param>
/// <param name="Module">The module at the first end; empty for an assembly.</param>
/// <param name="First">Price of a link at the shortest length.</param>
/// <param name="Last">Price of a link at the longest.</param>
public sealed record MediaStep(Length From, Length To, string Medium, string Cable, string Module, Money First, Money Last)
{
    /// <summary>What a further metre costs within the step.</summary>
    public Money EachMetre => To > From ? Money.FromUnits((double)(Last.Units - First.Units) / (To - From).Metres) : default;

    /// <summary>The steps of a kind of links up to a length, shortest first; lengths that nothing passes at are left out.</summary>
    public static ImmutableArray<MediaStep> Of(LengthPrices prices, int template, Length longest)
    {
        var steps = ImmutableArray.CreateBuilder<MediaStep>();
        for (var place = 0; prices.Grid.LengthOf(place) <= longest; place++)
        {
            if (prices.At(template, place) is not { } solution) continue;
            var (at, price) = (prices.Grid.LengthOf(place), solution.Price);
            var module = solution.FromModule?.Name ?? "";
            if (steps.Count > 0 && steps[^1].Cable == solution.Cable.Name && steps[^1].Module == module)
                steps[^1] = steps[^1] with { To = at, Last = price };
            else steps.Add(new MediaStep(at, at, solution.MediumName, solution.Cable.Name, module, price, price));
        }
        return steps.ToImmutable();
    }
}
