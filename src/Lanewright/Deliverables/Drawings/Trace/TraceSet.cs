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
        if (designed.Plan.Trunks.IsEmpty) yield break;
        var (design, book) = (designed.Design, designed.Plant.Value);
        var number = 0;
        // Of a split cage the first port stands for all.
        foreach (var way in book.Ways.Where(w => PatchPlaces.LegOf(designed.Plan, w.FirstLink) == 1).Take(MostDrawn))
        {
            var name = Identifiers.Cable(design.CableOf(way.FirstLink));
            if (CablePath.Of(designed.Plan, design, book, way.FirstLink, name) is not { } path) continue;
            var id = $"T{Numerals.Padded(++number, 2)}-trace";
            yield return DrawingFile.Of($"drawings/{id}.svg", m => new TraceDrawing(designed.Plan, id, name, path).Write(m, isFile: true));
        }
    }
}
