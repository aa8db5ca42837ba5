using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The way a link between two cages is made over a length, by the same search and the same order as the links of a plan;
/// remembered by kind of cage, split, rate and length.</summary>
internal sealed class LinkPricer(FinderContext context)
{
    private readonly SolutionFinder finder = new(context);
    private readonly Ranking ranking = new(context.Policy);
    private readonly Dictionary<CageModel, int> cageByReference = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, int> cageByContent = new(StringComparer.Ordinal);
    private readonly Dictionary<LinkKey, Solution?> chosen = [];
    private readonly Dictionary<LinkKey, ImmutableArray<LinkFloor>> floors = [];
    private readonly Dictionary<LinkKey, (double From, double To)> leastWatts = [];
    private readonly Dictionary<BitRate, LinkStatement> statements = [];

    /// <summary>Lengths cables can have.</summary>
    public LengthGrid Grid { get; } = new(context.Catalogue, context.Stock.Select(s => s.Length).OfType<Length>());

    /// <summary>The way taken, or null where none passes.</summary>
    public Solution? Chosen(LinkEnds ends, int place, bool isFromRaised, bool isToRaised, RackType? fromRack, RackType? toRack)
    {
        var key = new LinkKey(CageId(ends.From.Cage), ends.From.Mode, CageId(ends.To.Cage), ends.To.Mode, place,
            isFromRaised, isToRaised, fromRack, toRack);
        if (chosen.TryGetValue(key, out var found)) return found;
        var best = ranking.Order(
            finder.All(ClassOf(ends, key, Limit(ends.From, isFromRaised), Limit(ends.To, isToRaised))), Solution.NewPrice).FirstOrDefault();
        return chosen[key] = best is { Verdict: Verdict.Pass } ? best : null;
    }

    /// <summary>What a link of at least a length costs and draws at the least: every way that could pass at that length or a longer one,
    /// without those that another beats in both. Empty when there is none.</summary>
    public ImmutableArray<LinkFloor> Floors(LinkEnds ends, int place)
    {
        var key = FloorKey(ends, place);
        if (floors.TryGetValue(key, out var found)) return found;
        var ways = finder.All(ClassOf(ends, key, ends.From.Cage.HighestLimit, ends.To.Cage.HighestLimit)).Where(CouldPass).ToList();
        leastWatts[key] = ways.Count == 0
            ? default
            : (ways.Min(w => w.WattsIn(ends.Shape).From), ways.Min(w => w.WattsIn(ends.Shape).To));
        var all = ways.Select(s => new LinkFloor(s, s.Power.Value)).OrderBy(f => f.Solution.Price).ThenBy(f => f.Watts);
        var kept = ImmutableArray.CreateBuilder<LinkFloor>();
        foreach (var floor in all)
            if (kept.Count == 0 || floor.Watts < kept[^1].Watts) kept.Add(floor);
        return floors[key] = kept.ToImmutable();
    }

    /// <summary>Watts that what sits in a cage at each end of a link of at least a length draws at the least; none where no way is
    /// known.</summary>
    public (double From, double To) LeastWatts(LinkEnds ends, int place)
    {
        var key = FloorKey(ends, place);
        if (!leastWatts.ContainsKey(key)) _ = Floors(ends, place);
        return leastWatts[key];
    }

    private LinkKey FloorKey(LinkEnds ends, int place) =>
        new(CageId(ends.From.Cage), ends.From.Mode, CageId(ends.To.Cage), ends.To.Mode, place, true, true, null, null);

    /// <summary>A number for all cages alike, so that models with the same cage share their prices. How else it may be split does not
    /// count: what is asked about is one of its modes.</summary>
    private int CageId(CageModel cage)
    {
        if (cageByReference.TryGetValue(cage, out var id)) return id;
        var content = string.Join('|', cage.FormFactor.Name, cage.Lanes, string.Join(',', cage.LaneRates), cage.PowerLimit?.Value,
            cage.RaisedEvery > 0 ? cage.RaisedLimit?.Value : null, string.Join(',', cage.Fec),
            cage.HasAutonegotiation, cage.EnablesHighPower, cage.TakesAdapters);
        if (!cageByContent.TryGetValue(content, out id)) cageByContent[content] = id = cageByContent.Count;
        return cageByReference[cage] = id;
    }

    private LinkClass ClassOf(LinkEnds ends, LinkKey key, Watts? fromLimit, Watts? toLimit)
    {
        var rate = ends.From.Mode.Rate;
        if (!statements.TryGetValue(rate, out var statement)) statements[rate] = statement = RateQuestion.StatementFor(rate);
        return new LinkClass
        {
            Index = 0,
            Statement = statement,
            From = new EndSpec(0, ends.From.Cage, ends.From.Mode.Ways, fromLimit),
            To = new EndSpec(1, ends.To.Cage, ends.To.Mode.Ways, toLimit),
            Needed = Grid.LengthOf(key.Place),
            FromRack = key.FromRack,
            ToRack = key.ToRack,
            Shape = ends.Shape,
            Count = 1,
        };
    }

    private static Watts? Limit(PortUse use, bool isRaised) =>
        isRaised && use.Cage.RaisedEvery > 0 ? use.Cage.RaisedLimit : use.Cage.PowerLimit;

    /// <summary>Whether a way passes, or fails only because it is too short.</summary>
    private static bool CouldPass(Solution solution) => solution.Checks.All(c =>
        c.IsAdvice || c.Verdict != Verdict.Fail || c.Name is CheckNames.Overload or CheckNames.MinimumLength);
}
