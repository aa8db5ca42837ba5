using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>Which trunks to lay for the links that are patched and their growth: the fewest, and the cheapest that the places of the panels
/// allow.</summary>
public sealed class TrunkSizing
{
    private readonly Plan plan;
    private readonly PlantBook book;
    private readonly Share? growth;

    private TrunkSizing(Plan plan, PlantBook book, Share? growth)
    {
        this.plan = plan;
        this.book = book;
        this.growth = growth;
        Groups = [.. book.Trunks.Where(t => !t.Trunk.IsExisting).Select(Proposal)];
        Short = [.. PanelsTooSmall()];
        // A panel too small for its own groups says nothing about the others.
        var kept = Groups.Where(g => !g.Frontier.Mixes.IsEmpty && !IsShort(g.Trunk)).ToImmutableArray();
        var (mixes, isProven, bound) = PanelPlaces.Cheapest(plan, kept);
        if (!mixes.IsEmpty)
        {
            var cheapest = kept.Zip(mixes).ToDictionary(p => p.First.Trunk.Index, p => p.Second);
            Groups = [.. Groups.Select(g => g with { Cheapest = cheapest.GetValueOrDefault(g.Trunk.Index) })];
        }
        IsExact = isProven && Groups.All(g => g.Frontier.IsExact);
        Bound = Money.FromHundredths(bound);
    }

    /// <summary>The groups that are to be bought.</summary>
    public ImmutableArray<TrunkProposal> Groups { get; private init; }

    /// <summary>The panels without places for even the fewest trunks.</summary>
    public ImmutableArray<ShortPanel> Short { get; }

    /// <summary>Whether the fewest trunks of a group have no place in one of its panels.</summary>
    public bool IsShort(TrunkGroup trunk) => Short.Any(s => s.Panel == trunk.From || s.Panel == trunk.To);

    /// <summary>Whether the cheapest choice is proven to be that.</summary>
    public bool IsExact { get; }

    /// <summary>What no choice costs less than.</summary>
    public Money Bound { get; }

    /// <summary>Price of the cheapest mixes together; null where the panels have no places for any.</summary>
    public Money? Price => Groups.All(g => g.Cheapest is not null)
        ? Groups.Aggregate(Money.Zero, (sum, g) => sum + (g.Cheapest?.Price ?? Money.Zero))
        : null;

    /// <summary>The sizing of a plan's trunks.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="book">What its trunks carry.</param>
    /// <param name="growth">What is laid beyond what is in use; null for what the plan says, or is usual.</param>
    public static TrunkSizing Of(Plan plan, PlantBook book, Share? growth) => new(plan, book, growth);

    /// <summary>What is laid beyond what is in use of a group.</summary>
    public Share GrowthOf(TrunkGroup trunk) =>
        growth ?? trunk.Growth ?? Share.FromPercent(plan.Standards.Cabling("trunk", "growth")?.Value ?? 0);

    private IEnumerable<ShortPanel> PanelsTooSmall()
    {
        foreach (var panel in plan.Trunks.SelectMany(t => new[] { t.From, t.To }).Distinct().Order())
        {
            var ending = Groups.Where(g => g.Trunk.From == panel || g.Trunk.To == panel).ToList();
            var there = plan.Trunks.Where(t => t.IsExisting && (t.From == panel || t.To == panel)).Sum(t => t.Count);
            var ends = there + ending.Sum(g => g.Fewest?.Trunks ?? 0);
            var places = plan.Devices.Group(panel).Model.Slots;
            if (ending.Count > 0 && ends > places)
                yield return new ShortPanel(panel, plan.Devices.Name(panel), places, ends, [.. ending.Select(g => g.Trunk.Name)]);
        }
    }

    /// <summary>The group's own cable and cassette, whether or not they go together.</summary>
    private Money? PlannedPrice(TrunkState state)
    {
        if (state.Length is not { } length) return null;
        var trunk = state.Trunk;
        var each = trunk.Cable.PriceOf(length) + ((trunk.Cassette?.Price ?? Money.Zero) * trunk.CassettesEach)
            + PriceOfAdapter(trunk, isFar: false) + PriceOfAdapter(trunk, isFar: true);
        return each * trunk.Count;
    }

    private TrunkProposal Proposal(TrunkState state)
    {
        var wanted = TrunkNeed.Ports(state.Ports, GrowthOf(state.Trunk));
        ImmutableArray<TrunkKind> kinds = [.. plan.Catalogue.Cords.SelectMany(cable => Kind(state, cable)).OrderBy(k => k.Fibres)
            .ThenBy(k => k.Price).ThenBy(k => k.Cable.Name, StringComparer.Ordinal)];
        return new TrunkProposal(state, wanted, kinds, TrunkFrontier.Of(kinds, wanted)) { Planned = PlannedPrice(state) };
    }

    /// <summary>A cable as the group's trunk, with the cheapest cassette that takes it; none where it does not fit.</summary>
    private IEnumerable<TrunkKind> Kind(TrunkState state, CordModel cable)
    {
        var trunk = state.Trunk;
        if (state.Length is not { } length || !IsAlike(trunk, cable) || PositionsOf(cable) is not { } positions) yield break;
        var fibresPerPort = trunk.IsDuplex || state.Ports == 0 ? 2 : state.FibresLit / Math.Max(1, Math.Min(state.Ports, trunk.Ports));
        IEnumerable<SundryModel?> cassettes = [null];
        if (trunk.Cassette?.Cassette is { } shape)
            cassettes = plan.Catalogue.Sundries.Where(s => s.Cassette?.Connector == shape.Connector && s.Cassette?.Polish == shape.Polish);
        TrunkKind? best = null;
        foreach (var cassette in cassettes)
        {
            var asked = trunk with { Cable = cable, Positions = positions, Cassette = cassette };
            if (asked.Fibres < fibresPerPort || !Fits(asked)) continue;
            var price = cable.PriceOf(length) + ((cassette?.Price ?? Money.Zero) * asked.CassettesEach)
                + PriceOfAdapter(asked, isFar: false) + PriceOfAdapter(asked, isFar: true);
            if (best is null || price < best.Price) best = new TrunkKind(cable, cassette, asked.Fibres, asked.PortsEach, price);
        }
        if (best is not null) yield return best;
    }

    private Money PriceOfAdapter(TrunkGroup asked, bool isFar) =>
        TrunkFronts.Adapter(plan.Catalogue, asked, isFar)?.Price ?? Money.Zero;

    private bool Fits(TrunkGroup asked) =>
        CassetteFit.Problem(plan.Standards, asked).Length == 0
        && !(asked.IsAngled && asked.Parts.Any(p => !p.TakesAngled))
        && TrunkInside.Of(asked, plan.Standards.Polarity).IsKnown;

    /// <summary>Behind cassettes any array will do; an open one is what the cords of its links end in.</summary>
    private static bool IsAlike(TrunkGroup trunk, CordModel cable) =>
        cable.Fibre == trunk.Cable.Fibre && cable.Legs == 1 && cable.Near == cable.Far && cable.PolishNear == cable.PolishFar
        && cable.PinsNear == trunk.Cable.PinsNear && cable.PinsFar == trunk.Cable.PinsFar
        && (trunk.IsDuplex || (cable.Near == trunk.Cable.Near && cable.PolishNear == trunk.Cable.PolishNear));

    private int? PositionsOf(CordModel cable) =>
        plan.Standards.Connector(cable.Near) is { } connector && connector.Word("family") == PatchFinder.Arrays
        && connector.Real("positions") is { } positions && plan.Standards.Polarity.Positions.Contains((int)positions.Value)
            ? (int)positions.Value
            : null;
}
