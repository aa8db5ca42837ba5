using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>A drawing for each group of trunks: the way of the first cable that goes through it.</summary>
internal static class TraceSet
{
    private const int MostDrawn = 60;

    /// <summary>The files.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        if (designed.Plan.Trunks.IsEmpty) yield break;
        var (design, book) = (designed.Design, designed.Plant.Value);
        var seen = new HashSet<int>();
        for (var cable = 0; cable < design.Cables.Length && seen.Count < MostDrawn; cable++)
        {
            if (book.PatchOf(cable) is not { } patch || !seen.Add(patch.Trunk.Index)) continue;
            var name = Identifiers.Cable(cable);
            if (CablePath.Of(designed.Plan, design, book, cable, name) is not { } path) continue;
            var limit = design.SolutionOf(design.Cables[cable].FirstLink)?.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
            var id = $"T{Numerals.Padded(patch.Trunk.Index + 1, 2)}-trace";
            yield return DrawingFile.Of($"drawings/{id}.svg",
                m => new TraceDrawing(designed.Plan, id, name, path, patch, limit).Write(m, isFile: true));
        }
    }
}
