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
        var (mixes, isProven, bound) = PanelPlaces.Cheapest(plan, Groups);
        if (!mixes.IsEmpty) Groups = [.. Groups.Select((g, i) => g with { Cheapest = mixes[i] })];
        IsExact = isProven && Groups.All(g => g.Frontier.IsExact);
        Bound = Money.FromHundredths(bound);
    }

    /// <summary>The groups that are to be bought.</summary>
    public ImmutableArray<TrunkProposal> Groups { get; private init; }

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

    private TrunkProposal Proposal(TrunkState state)
    {
        var wanted = TrunkNeed.Ports(state.Ports, GrowthOf(state.Trunk));
        ImmutableArray<TrunkKind> kinds = [.. plan.Catalogue.Cords.SelectMany(cable => Kind(state, cable)).OrderBy(k => k.Fibres)
            .ThenBy(k => k.Price).ThenBy(k => k.Cable.Name, StringComparer.Ordinal)];
        return new TrunkProposal(state, wanted, kinds, TrunkFrontier.Of(kinds, wanted));
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
            var price = cable.PriceOf(length) + ((cassette?.Price ?? Money.Zero) * asked.CassettesEach);
            if (best is null || price < best.Price) best = new TrunkKind(cable, cassette, asked.Fibres, asked.PortsEach, price);
        }
        if (best is not null) yield return best;
    }

    private bool Fits(TrunkGroup asked) =>
        CassetteFit.Problem(plan.Standards, asked, isFar: false).Length == 0
        && CassetteFit.Problem(plan.Standards, asked, isFar: true).Length == 0
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
