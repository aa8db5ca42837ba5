using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Plant;

/// <summary>Which port of which trunk every patched cable takes, in the order of the cables: the first free port, trunk after
/// trunk.</summary>
public sealed class PlantBook
{
    private readonly Dictionary<int, TrunkPatch> patchOf = [];
    private readonly Dictionary<(int Trunk, bool IsFar), int> slots = [];

    private PlantBook(Plan plan, LinkDesign design)
    {
        TakeSlots(plan);
        var table = plan.Standards.Polarity;
        var answers = plan.Trunks.Select(t => PolarityAnswer.Of(new FibreChain(t.Positions, t.Chain, t.IsAngled), table)).ToList();
        var taken = new int[plan.Trunks.Length];
        var lit = new int[plan.Trunks.Length];
        for (var cable = 0; cable < design.Cables.Length; cable++)
        {
            if (design.SolutionOf(design.Cables[cable].FirstLink) is not { Through: { } way } solution) continue;
            var index = way.Trunk.Index;
            patchOf[cable] = Patch(way, taken[index]++, answers[index]);
            lit[index] += Lit(way.Trunk, solution);
        }
        var ways = design.Trunks;
        Trunks =
        [
            .. plan.Trunks.Select(t => new TrunkState(t, ways.Of(t), taken[t.Index], Math.Min(lit[t.Index], t.Count * t.Positions),
                answers[t.Index], [.. TestLimit.Of(plan.Standards, t, ways.Of(t))])),
        ];
    }

    /// <summary>What each group of trunks carries.</summary>
    public ImmutableArray<TrunkState> Trunks { get; }

    /// <summary>The trunks of a design.</summary>
    public static PlantBook Of(Plan plan, LinkDesign design) => new(plan, design);

    /// <summary>Where a cable is patched; null for one that is not.</summary>
    public TrunkPatch? PatchOf(int cable) => patchOf.GetValueOrDefault(cable);

    /// <summary>Ends of trunks in each panel, rising by device.</summary>
    public static ImmutableSortedDictionary<int, int> EndsByPanel(Plan plan) => plan.Trunks
        .SelectMany(t => new[] { (Panel: t.From, t.Count), (Panel: t.To, t.Count) })
        .GroupBy(e => e.Panel)
        .ToImmutableSortedDictionary(g => g.Key, g => g.Sum(e => e.Count));

    /// <summary>Ends take the places of a panel in the order of the trunks.</summary>
    private void TakeSlots(Plan plan)
    {
        var next = new Dictionary<int, int>();
        foreach (var trunk in plan.Trunks)
        {
            foreach (var (panel, isFar) in new[] { (trunk.From, false), (trunk.To, true) })
            {
                slots[(trunk.Index, isFar)] = next.GetValueOrDefault(panel) + 1;
                next[panel] = next.GetValueOrDefault(panel) + trunk.Count;
            }
        }
    }

    private TrunkPatch Patch(TrunkWay way, int nth, PolarityAnswer answer)
    {
        var trunk = way.Trunk;
        var (number, port) = ((nth / trunk.PortsEach) + 1, (nth % trunk.PortsEach) + 1);
        // Ports are counted from the trunk's own near panel, whichever way round a link goes.
        var arrives = trunk.Cassette is null ? 1 : answer.Pairs.FirstOrDefault(p => p.Near == port)?.Far ?? 0;
        var (here, there) = (slots[(trunk.Index, false)] + number - 1, slots[(trunk.Index, true)] + number - 1);
        return way.IsTurned
            ? new TrunkPatch(trunk, number, arrives, port, trunk.To, there, trunk.From, here)
            : new TrunkPatch(trunk, number, port, arrives, trunk.From, here, trunk.To, there);
    }

    /// <summary>A duplex port lights two fibres; an array those of its lanes, there and back.</summary>
    private static int Lit(TrunkGroup trunk, Solution solution)
    {
        if (trunk.Cassette is not null) return 2;
        var whole = solution.FromModule?.Applications.FirstOrDefault(a => a.Instances == 1)?.Optical ?? solution.FromApplication?.Optical;
        return whole is null ? trunk.Positions : Math.Min(trunk.Positions, whole.Fibres);
    }
}
