using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Which way every cable of a design goes, and what lies in each stretch of every pathway. Cables between the same two racks go
/// the same way, so the work is that of the pairs of racks.</summary>
public sealed class PathwayBook
{
    private readonly Plan plan;
    private readonly ImmutableSortedDictionary<int, HallWays> halls;
    private readonly Dictionary<(int From, int To), ImmutableArray<(HallWays Ways, int Segment)>> ways = [];
    private readonly Dictionary<(int From, int To), ImmutableArray<Pathway>> pathways = [];

    private PathwayBook(Plan plan, LinkDesign design)
    {
        this.plan = plan;
        halls = HallWays.Of(plan.Building);
        Fills = halls.IsEmpty ? [] : Fill(design);
    }

    /// <summary>The halls with pathways.</summary>
    public IEnumerable<HallWays> Halls => halls.Values;

    /// <summary>Every stretch of every pathway, hall by hall.</summary>
    public ImmutableArray<SegmentFill> Fills { get; }

    /// <summary>The ways of a design.</summary>
    public static PathwayBook Of(Plan plan, LinkDesign design) => new(plan, design);

    /// <summary>The pathway that cables of a rack come down from; null where its hall has none.</summary>
    public Pathway? OverRack(Rack rack) => halls.TryGetValue(rack.Hall.Index, out var own) ? own.Over(rack) : null;

    /// <summary>The pathways that a cable between two devices lies in, each once.</summary>
    public ImmutableArray<Pathway> PathwaysBetween(int fromDevice, int toDevice)
    {
        var key = (plan.Devices.RackIndex(fromDevice), plan.Devices.RackIndex(toDevice));
        if (pathways.TryGetValue(key, out var found)) return found;
        return pathways[key] = [.. WayBetween(key.Item1, key.Item2).Select(w => w.Ways.Graph.Segments[w.Segment].Pathway).Distinct()];
    }

    /// <summary>The pathways a cable goes through, in order, each once in a row; empty where there are none.</summary>
    public IEnumerable<string> Through(int fromDevice, int toDevice)
    {
        var last = "";
        foreach (var (hall, segment) in WayBetween(plan.Devices.RackIndex(fromDevice), plan.Devices.RackIndex(toDevice)))
        {
            var name = hall.Hall.Name + "/" + hall.Graph.Segments[segment].Pathway.Name;
            if (name != last) yield return name;
            last = name;
        }
    }

    /// <summary>The pathways a cable goes through, in order, each once in a row, with how far it lies in it.</summary>
    public ImmutableArray<(Pathway Pathway, Length Length)> Stretches(int fromDevice, int toDevice)
    {
        var stretches = ImmutableArray.CreateBuilder<(Pathway Pathway, Length Length)>();
        foreach (var (hall, segment) in WayBetween(plan.Devices.RackIndex(fromDevice), plan.Devices.RackIndex(toDevice)))
        {
            var (pathway, length) = (hall.Graph.Segments[segment].Pathway, Length.FromMetres(hall.Graph.Segments[segment].Metres));
            if (stretches.Count > 0 && stretches[^1].Pathway == pathway)
                stretches[^1] = (pathway, stretches[^1].Length + length);
            else
                stretches.Add((pathway, length));
        }
        return stretches.ToImmutable();
    }

    private ImmutableArray<SegmentFill> Fill(LinkDesign design)
    {
        var starts = new Dictionary<int, int>();
        var total = 0;
        foreach (var (hall, own) in halls)
        {
            starts[hall] = total;
            total += own.Graph.Segments.Length;
        }
        var (cables, area, unknown) = (new int[total], new double[total], new int[total]);
        foreach (var (from, to, count, diameter) in Laid(design))
        {
            foreach (var (hall, segment) in WayBetween(plan.Devices.RackIndex(from), plan.Devices.RackIndex(to)))
            {
                var index = starts[hall.Hall.Index] + segment;
                cables[index] += count;
                area[index] += SegmentFill.Round(diameter) * count;
                if (diameter.Metres <= 0) unknown[index] += count;
            }
        }
        return
        [
            .. from hall in halls
               from segment in Enumerable.Range(0, hall.Value.Graph.Segments.Length)
               let index = starts[hall.Key] + segment
               select new SegmentFill(hall.Value, segment, cables[index], area[index], unknown[index]),
        ];
    }

    /// <summary>What is laid from device to device: cables, the cords at both ends of trunks, and trunks.</summary>
    private IEnumerable<(int From, int To, int Count, Length Diameter)> Laid(LinkDesign design)
    {
        foreach (var run in design.Cables)
        {
            if (design.SolutionOf(run.FirstLink) is not { } solution) continue;
            var (from, to) = (plan.Links.FromDevice(run.FirstLink), plan.Links.ToDevice(run.FirstLink));
            if (solution.Through is not { } way)
            {
                yield return (from, to, 1, solution.Cable.Diameter);
                continue;
            }
            yield return (from, way.NearPanel, Laid(solution.Patching[0], run), solution.Patching[0].Cord.Diameter);
            for (var i = 1; i < way.Legs.Length; i++)
            {
                var bridge = solution.Patching[i];
                yield return (way.Legs[i - 1].FarPanel, way.Legs[i].NearPanel, Laid(bridge, run), bridge.Cord.Diameter);
            }
            yield return (way.FarPanel, to, Laid(solution.Patching[^1], run), solution.Patching[^1].Cord.Diameter);
        }
        foreach (var trunk in plan.Trunks) yield return (trunk.From, trunk.To, trunk.Count, trunk.Cable.Diameter);
    }

    /// <summary>Cords of one cable that lie side by side.</summary>
    private static int Laid(PatchCord cord, CableRun run) => cord.Links > 1 ? 1 : run.Links;

    /// <summary>The stretches between two racks: of one hall, or of both as far as their exits.</summary>
    private ImmutableArray<(HallWays Ways, int Segment)> WayBetween(int from, int to)
    {
        if (from < 0 || to < 0 || from == to) return [];
        if (ways.TryGetValue((from, to), out var found)) return found;
        var (a, b) = (plan.Building.Racks[from], plan.Building.Racks[to]);
        var way = a.Hall == b.Hall
            ? In(a.Hall.Index, from, to)
            : In(a.Hall.Index, from, HallWays.Exit).Concat(In(b.Hall.Index, HallWays.Exit, to));
        return ways[(from, to)] = [.. way];
    }

    private IEnumerable<(HallWays, int)> In(int hall, int from, int to)
    {
        if (!halls.TryGetValue(hall, out var own)) return [];
        var way = own.Way(from, to);
        // Trees begin at the lower index, so that a way may come out backwards.
        return (from < to ? way.Reverse() : way).Select(s => (own, s));
    }
}
