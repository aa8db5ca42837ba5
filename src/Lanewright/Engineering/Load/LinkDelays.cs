using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Load;

/// <summary>The least and the most delay of each link of a fabric: links in parallel may differ in length.</summary>
internal sealed class LinkDelays
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly Dictionary<(int Class, int Share), Delay?> known = [];

    private LinkDelays(FabricMap map, LinkDesign design)
    {
        plan = map.Plan;
        this.design = design;
        Least = new Delay?[map.Graph.Links.Length];
        Most = new Delay?[Least.Length];
    }

    /// <summary>The least of each fabric link; null where no way to make it is known.</summary>
    public Delay?[] Least { get; }

    /// <summary>The most of each fabric link.</summary>
    public Delay?[] Most { get; }

    /// <summary>The weakest mark of the values used.</summary>
    public Mark Mark { get; private set; }

    /// <summary>Delays of all links of a fabric.</summary>
    public static LinkDelays Of(FabricMap map, LinkDesign design)
    {
        var delays = new LinkDelays(map, design);
        for (var link = 0; link < map.Plan.Links.Count; link++)
        {
            if (map.LinkOf(link) is not (>= 0 and var at) || delays.DelayOf(link) is not { } delay) continue;
            if (delays.Least[at] is not { } least || delay.Total < least.Total) delays.Least[at] = delay;
            if (delays.Most[at] is not { } most || delay.Total > most.Total) delays.Most[at] = delay;
        }
        foreach (var (at, route) in map.Routes)
        {
            if (route.Answer.Design.Latency is not { } way) continue;
            delays.Mark = Marks.Weaker(delays.Mark, way.Source.Mark);
            delays.Least[at] = delays.Most[at] = new Delay(1, 0, default, default, way.Value);
        }
        return delays;
    }

    private Delay? DelayOf(int link)
    {
        var kind = (design.ClassOf(link), design.ShareOf(link));
        if (known.TryGetValue(kind, out var delay)) return delay;
        if (design.SolutionOf(link) is { } solution)
        {
            var way = WayOf(solution);
            Mark = Marks.Weaker(Mark, solution.Latency.Source.Mark);
            delay = new Delay(1, 0, default, solution.Latency.Value - way, way);
        }
        return known[kind] = delay;
    }

    /// <summary>The same link with no code.</summary>
    private Duration WayOf(Solution solution)
    {
        var fibre = solution.Channel?.Fibre
            ?? (solution.Medium == CableMedium.Aoc ? plan.Standards.Fibres.First(f => f.Kind == FibreKind.MultiMode) : null);
        return fibre is not null
            ? LinkLatency.OverFibre(plan.Standards, fibre, solution.Length, FecSide.None).Value
            : LinkLatency.OverCopper(plan.Standards, solution.Cable is CordModel, solution.Length, FecSide.None).Value;
    }
}
