using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>A drawing for each way through trunks: that of the first link which takes it.</summary>
internal static class TraceSet
{
    /// <summary>Ways drawn at most: more would fill a folder nobody looks through.</summary>
    public const int MostDrawn = 60;

    /// <summary>The files.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        var number = 0;
        foreach (var way in Ways(designed).Take(MostDrawn))
        {
            var id = NameOf(++number);
            if (Followed(designed, way) is { } cable)
                yield return DrawingFile.Of($"drawings/{id}.svg", m => new TraceDrawing(designed.Plan, id, cable).Write(m, isFile: true));
        }
    }

    /// <summary>The name of a sheet by its number, from 1.</summary>
    public static string NameOf(int number) => $"T{Numerals.Padded(number, 2)}-trace";

    /// <summary>The ways that are drawn, in the order of their sheets. Of a split cage the first port stands for all.</summary>
    public static IEnumerable<WayState> Ways(DesignedPlan designed) =>
        designed.Plant.Value.Ways.Where(w => designed.Plan.Links.LegOf(w.FirstLink) == 1);

    /// <summary>The first cable of a way, followed.</summary>
    public static TracedCable? Followed(DesignedPlan designed, WayState way) =>
        TracedCable.Followed(designed, new NamedLink(way.FirstLink, IsWholeCable: false));
}
