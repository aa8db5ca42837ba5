using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>A drawing for each way through trunks: that of the first link which takes it.</summary>
internal static class TraceSet
{
    private const int MostDrawn = 60;

    /// <summary>The files.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        var number = 0;
        foreach (var (_, cable) in Ways(designed).Take(MostDrawn))
        {
            var id = NameOf(++number);
            yield return DrawingFile.Of($"drawings/{id}.svg", m => new TraceDrawing(designed.Plan, id, cable).Write(m, isFile: true));
        }
    }

    /// <summary>The name of a sheet by its number, from 1.</summary>
    public static string NameOf(int number) => $"T{Numerals.Padded(number, 2)}-trace";

    /// <summary>The ways that are drawn, each with its first link followed. Of a split cage the first port stands for all.</summary>
    public static IEnumerable<(WayState Way, TracedCable Cable)> Ways(DesignedPlan designed)
    {
        if (designed.Plan.Trunks.IsEmpty) yield break;
        foreach (var way in designed.Plant.Value.Ways.Where(w => PatchPlaces.LegOf(designed.Plan, w.FirstLink) == 1))
            if (TracedCable.Followed(designed, new NamedLink(way.FirstLink, IsWholeCable: false)) is { } cable) yield return (way, cable);
    }
}
