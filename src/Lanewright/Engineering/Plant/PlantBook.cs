using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Plant;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Which ports of which trunks every patched link takes, in the order of the links, and where its fibres lead.</summary>
public sealed class PlantBook
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly ImmutableArray<TrunkInside> insides;
    private readonly PortLedger ledger;
    private readonly Dictionary<int, ImmutableArray<TrunkPatch>> patchesOf = [];
    private readonly Dictionary<string, int> wayByKey = [];
    private readonly List<WayState> ways = [];
    private readonly Dictionary<int, int> wayOf = [];

    private PlantBook(Plan plan, LinkDesign design)
    {
        this.plan = plan;
        this.design = design;
        insides = [.. plan.Trunks.Select(t => TrunkInside.Of(t, plan.Standards.Polarity))];
        ledger = new PortLedger(plan, insides);
        var lit = Patch();
        Ways = [.. ways];
        Portless = [.. patchesOf.Keys.Where(IsPortless).Order()];
        Fronts = new Lazy<PanelFronts>(() => PanelFronts.Of(plan, this));
        Trunks = [.. plan.Trunks.Select(t => StateOf(t, lit[t.Index]))];
    }

    /// <summary>What each group of trunks carries.</summary>
    public ImmutableArray<TrunkState> Trunks { get; }

    /// <summary>What the fronts of the panels show.</summary>
    public Lazy<PanelFronts> Fronts { get; }

    /// <summary>The ways that links take, in the order of their first links.</summary>
    public ImmutableArray<WayState> Ways { get; }

    /// <summary>The trunks of a design.</summary>
    public static PlantBook Of(Plan plan, LinkDesign design) => new(plan, design);

    /// <summary>Where a link goes through trunks, in order; empty for one that goes through none.</summary>
    public ImmutableArray<TrunkPatch> PatchesOf(int link) => patchesOf.GetValueOrDefault(link, []);

    /// <summary>Whether a trunk on the way of a link has no port left for it.</summary>
    public bool IsPortless(int link) => PatchesOf(link).Any(p => !p.IsThere);

    /// <summary>Links for which a trunk on their way has no port left, rising.</summary>
    public ImmutableArray<int> Portless { get; }

    /// <summary>The way a link takes; null for one that is not patched.</summary>
    public WayState? WayOf(int link) => wayOf.TryGetValue(link, out var way) ? Ways[way] : null;

    /// <summary>Where transmitters and receivers of a link meet, through trunks or over one cord from end to end; null for copper, active
    /// cables and fan-outs, whose ends are made for one another.</summary>
    public WayPolarity? PolarityOf(int link)
    {
        if (WayOf(link) is { } way) return way.Polarity;
        return design.SolutionOf(link) is { } solution ? OverOneCord(plan.Standards, solution) : null;
    }

    /// <summary>Where transmitters and receivers of a link over one cord from end to end meet; null for any other.</summary>
    internal static WayPolarity? OverOneCord(StandardsLibrary standards, Solution solution)
    {
        if (solution is not { Through: null, Cable: CordModel { Legs: 1, IsTwistedPair: false } cord }) return null;
        var positions = (int)(standards.Connector(cord.Near)?.Real("positions")?.Value ?? 0);
        if (cord.Near != cord.Far || solution.FarCord is not null || positions == 0) return null;
        var isDuplex = positions == PositionsOfDuplex;
        var lanes = WayCords.FibresOf(solution) / 2;
        return WayPolarities.Of(standards.Polarity, [], [],
            new WayCords([isDuplex ? PatchKind.Duplex : PatchKind.Array], [isDuplex ? 0 : positions], lanes, 0));
    }

    /// <summary>The fibres of a link, followed through the ports it takes; empty where they are not known.</summary>
    public ImmutableArray<FibreLine> FibresOf(int link) =>
        WayOf(link) is { } way && design.SolutionOf(link) is { } solution && !way.Polarity.Fibres.IsEmpty
            ? new FibreWalk(plan.Standards.Polarity, PatchesOf(link), InsidesOf(way.Way), WayCords.Of(solution, plan.Links.LegOf(link)),
                way.Polarity.CordTypes).All()
            : [];

    /// <summary>Ends of trunks in each panel, rising by device.</summary>
    public static ImmutableSortedDictionary<int, int> EndsByPanel(Plan plan) => plan.Trunks
        .SelectMany(t => new[] { (Panel: t.From, t.Count), (Panel: t.To, t.Count) })
        .GroupBy(e => e.Panel)
        .ToImmutableSortedDictionary(g => g.Key, g => g.Sum(e => e.Count));

    /// <summary>The first place in its panel of a group's ends.</summary>
    public int SlotOf(TrunkGroup trunk, bool isFar) => ledger.SlotOf(trunk, isFar);

    /// <summary>Gives every link its ports; the fibres that carry light, by group and trunk.</summary>
    private int[][] Patch()
    {
        int[][] lit = [.. plan.Trunks.Select(t => new int[t.Count])];
        for (var link = 0; link < plan.Links.Count && !plan.Trunks.IsEmpty; link++)
        {
            var cable = design.CableOf(link);
            if (cable < 0 || design.SolutionOf(link) is not { Through: { } way } solution) continue;
            var before = way.Legs.Select(l => ledger.TakenOf(l.Trunk)).ToList();
            var patches = patchesOf[link] = ledger.Take(solution, cable, plan.Links.LegOf(link));
            for (var i = 0; i < way.Legs.Length; i++)
                if (ledger.TakenOf(way.Legs[i].Trunk) > before[i] && patches[i].IsThere)
                    lit[way.Legs[i].Trunk.Index][patches[i].Number - 1] += Lit(way.Legs[i].Trunk, solution);
            Note(link, way, solution, patches);
        }
        return lit;
    }

    /// <summary>Links that go the same way over cords alike, and in the same order, have one polarity.</summary>
    private void Note(int link, TrunkWay way, Solution solution, ImmutableArray<TrunkPatch> patches)
    {
        var cords = WayCords.Of(solution, plan.Links.LegOf(link));
        var key = string.Join('|', string.Join(',', way.Legs.Select(l => (l.Trunk.Index, l.IsTurned))), string.Join(',', cords.Kinds),
            string.Join(',', cords.Positions), cords.Lanes, cords.Part);
        if (!wayByKey.TryGetValue(key, out var index))
        {
            wayByKey[key] = index = ways.Count;
            var polarity = WayPolarities.Of(plan.Standards.Polarity, patches, InsidesOf(way), cords);
            ways.Add(new WayState(way, plan.Links.Statement(link), link, 0, polarity));
        }
        ways[index] = ways[index] with { Links = ways[index].Links + 1 };
        wayOf[link] = index;
    }

    private ImmutableArray<TrunkInside> InsidesOf(TrunkWay way) => [.. way.Legs.Select(l => insides[l.Trunk.Index])];

    private TrunkState StateOf(TrunkGroup trunk, int[] lit)
    {
        var length = design.Trunks.Of(trunk);
        return new TrunkState(
            trunk, length, ledger.TakenOf(trunk), Alone(trunk, length),
            [.. Ways.Where(w => w.Way.Legs.Any(l => l.Trunk == trunk))],
            [.. TestLimit.Of(plan.Standards, trunk, length)])
        {
            LitEach = [.. lit],
            Misfit = CassetteFit.Dark(plan.Standards, trunk),
        };
    }

    /// <summary>A link that went through these trunks alone: duplex ports, arrays, or a cage taken apart by the cassette.</summary>
    private WayPolarity Alone(TrunkGroup trunk, Quantities.Length? length)
    {
        PatchKind Kind(bool isFar) => trunk.CassetteAt(isFar) is null ? PatchKind.Array : PatchKind.Duplex;
        int Positions(bool isFar) => trunk.CassetteAt(isFar) is null ? trunk.Positions : 0;
        var part = trunk.CassetteEnds is CassetteEnds.From or CassetteEnds.To ? 1 : 0;
        var cords = new WayCords([Kind(false), Kind(true)], [Positions(false), Positions(true)], 0, part);
        var patch = ledger.Patch(new TrunkLeg(trunk, IsTurned: false, length), 0, Math.Max(1, part));
        return WayPolarities.Of(plan.Standards.Polarity, [patch], [insides[trunk.Index]], cords);
    }

    private const int PositionsOfDuplex = 2;

    /// <summary>A duplex port lights two fibres; an array those of its lanes, there and back.</summary>
    private static int Lit(TrunkGroup trunk, Solution solution)
    {
        if (trunk.IsDuplex) return 2;
        var fibres = WayCords.FibresOf(solution);
        return fibres == 0 ? trunk.Fibres : Math.Min(trunk.Fibres, fibres);
    }
}
