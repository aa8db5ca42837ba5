using Lanewright.Engineering.Labels;
using Lanewright.Findings;

namespace Lanewright.Rules.Space;

/// <summary>Racks whose labels cannot be told apart.</summary>
internal sealed class PlacesNamedAlike() : Rule("LW4307", nameof(PlacesNamedAlike), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var alike in judgement.Racks.Value.Racks.Select(r => r.Rack).GroupBy(PlaceCode.Of).Where(g => g.Count() > 1))
        {
            var (first, second) = (alike.First(), alike.ElementAt(1));
            judgement.Add(this, second.Hall.Span,
                $"racks {first.Name} and {second.Name} are both '{alike.Key}' on labels, which keep "
                + "letters and digits only; rename a hall or a row",
                alike.Key, alike.Count());
        }
    }
}
