using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Choice;

/// <summary>What every search for ways to make a link needs: the limits, the catalogue and the policy.</summary>
/// <param name="Standards">The limits.</param>
/// <param name="Catalogue">What can be bought.</param>
/// <param name="Policy">What holds for the project.</param>
public sealed record FinderContext(StandardsLibrary Standards, Catalogue Catalogue, Policy Policy)
{
    /// <summary>What is on hand; a longer cable of it may serve where a shorter one would be bought.</summary>
    public ImmutableArray<StockItem> Stock { get; init; } = [];

    /// <summary>Breaks long searches off.</summary>
    public CancellationToken Cancel { get; init; }

    private static readonly Citation OwnPolicy = new("policy of the plan", "", "", Mark.Seen);

    /// <summary>One end of a class as the comparisons want it.</summary>
    public static EndUse UseOf(EndSpec spec, LinkEnd end, BitRate rate) => new()
    {
        Cage = spec.Cage,
        Mode = new PortMode(spec.Ways, rate),
        PowerLimit = spec.PowerLimit,
        UsesAdapter = end.UsesAdapter,
        FixedFec = end.Fec,
        FixedAutonegotiation = end.Autonegotiation,
    };

    /// <summary>Comparisons that any medium goes through.</summary>
    public IEnumerable<Check> Common(LinkClass link, string medium, bool isDraft, bool isNamed, Length length, Known<Duration> latency)
    {
        if (Policy.ForbiddenMedia.Contains(medium))
            yield return Check.Of(CheckNames.Forbidden, false, OwnPolicy, $"the policy forbids {medium}");
        if (isDraft)
        {
            const string wasDraft = "the type's standard was a draft when its values were taken";
            yield return isNamed || Policy.AllowsDrafts
                ? Check.If(CheckNames.Draft, OwnPolicy, wasDraft)
                : Check.Of(CheckNames.Draft, false, OwnPolicy, wasDraft + ", and the policy does not allow drafts");
        }
        if (link.Way is { } way)
        {
            var needed = new Known<double>(way.Metres, OwnPolicy with { Document = "geometry of the plan" });
            yield return Check.AtLeast(CheckNames.FixedLength, length.Metres, needed, "m");
        }
        if (link.Statement.LatencyMax is { } most)
        {
            var delay = Math.Round(latency.Value.Nanoseconds, 4);
            var allowed = new Known<double>(most.Nanoseconds, Citation.OfPlan);
            yield return Check.AtMost(CheckNames.Latency, delay, allowed, "ns", latency.Source.Mark);
        }
    }

    /// <summary>Whether a plan name of a medium is allowed by the statement.</summary>
    public static bool Allows(LinkStatement statement, string medium) => statement.Media.IsEmpty || statement.Media.Contains(medium);

    /// <summary>The length to put in: what the statement fixes, else what can be ordered; null when nothing can.</summary>
    /// <param name="link">The links.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="least">The shortest link the type at its ends allows.</param>
    public static Length? LengthFor(LinkClass link, CableItem cable, Length least = default)
    {
        if (link.Needed is not { } needed) return null;
        // A fixed length of fibre is a plant that is as long as it is; a fixed length of an assembly is one to be ordered.
        if (link.Statement.Length is not null && cable is CordModel) return needed;
        return cable.OrderedFor(least > needed ? least : needed);
    }

    /// <summary>Lengths of a cable to put in: what <see cref="LengthFor"/> says, then longer ones in stock, unless the plan fixes the
    /// length. One that is more than twice as long, and by more than 2 m, would leave a coil nobody can stow.</summary>
    public IEnumerable<Length?> LengthsFor(LinkClass link, CableItem cable, Length least = default)
    {
        var ordered = LengthFor(link, cable, least);
        yield return ordered;
        if (link.Statement.Length is not null || ordered is not { } shortest) yield break;
        var longest = Length.FromMetres(Math.Max(shortest.Metres * 2, shortest.Metres + 2));
        foreach (var item in Stock)
        {
            if (item.Item.Name == cable.Name && item.Quantity > 0 && item.Length is { } length && length > shortest && length <= longest)
                yield return length;
        }
    }

    /// <summary>The adapters of both ends: the cheapest of the catalogue for each end whose module sits in one.</summary>
    public ImmutableArray<SundryModel> Adapters(params IEnumerable<(EndUse End, FormFactor Module)> ends) =>
    [
        .. ends
            .Where(e => e.End.UsesAdapter)
            .Select(e => Catalogue.Sundries
                .Where(s => s.Takes(e.Module, e.End.Cage.FormFactor))
                .OrderBy(s => s.Price)
                .ThenBy(s => s.Name, StringComparer.Ordinal)
                .FirstOrDefault())
            .OfType<SundryModel>(),
    ];

    /// <summary>Adapters as parts: one for each link.</summary>
    public static IEnumerable<PartUse> Uses(ImmutableArray<SundryModel> adapters) => adapters.Select(a => new PartUse(a, null, 1));

    /// <summary>Parts without the cable where it lies there already.</summary>
    public static ImmutableArray<PartUse> WithoutExisting(LinkStatement statement, IEnumerable<PartUse> parts) =>
        [.. parts.Where(p => !statement.IsExisting || p.Item is not CableItem)];
}
