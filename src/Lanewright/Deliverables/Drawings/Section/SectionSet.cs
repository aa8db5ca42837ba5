using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Section;

/// <summary>Sections of the fullest pathways.</summary>
internal static class SectionSet
{
    /// <summary>Sections drawn at most.</summary>
    public const int Most = 12;

    /// <summary>The drawings.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed) => Fullest(designed).Select((fill, index) =>
    {
        var name = Name(index);
        return DrawingFile.Of($"drawings/{name}.svg", m => new SectionDrawing(designed, fill).Write(m, name, isFile: true));
    });

    /// <summary>Name of a drawing.</summary>
    public static string Name(int index) => $"{Identifiers.Section(index + 1)}-section";

    /// <summary>The fullest stretch of each pathway with cables, the fullest pathways first.</summary>
    public static ImmutableArray<SegmentFill> Fullest(DesignedPlan designed) =>
    [
        .. designed.Pathways.Value.Fills.Where(f => f.Cables > 0)
            .GroupBy(f => f.Pathway)
            .Select(g => g.MaxBy(Share) ?? g.First())
            .OrderByDescending(Share).ThenBy(f => f.Segment)
            .Take(Most),
    ];

    private static double Share(SegmentFill fill) => Math.Round(fill.Fill.Value, 9);
}
