using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Where in a hall a finding means.</summary>
internal static class Places
{
    /// <summary>A stretch by its ends, in metres along and across the rows; a route between halls has no such place.</summary>
    public static string Of(SegmentFill fill) => fill.Pathway.Route is null
        ? $"between {Of(fill.Net.Points[fill.Stretch.A])} and {Of(fill.Net.Points[fill.Stretch.B])}"
        : "on its whole length";

    /// <summary>Ducts in line by their names, and the word for what they do.</summary>
    public static string Of(DuctRun run) => run.Ducts is [var only]
        ? $"'{only.FullName}' runs"
        : $"{Numerals.Whole(run.Ducts.Length)} ducts in line, '{run.Ducts[0].FullName}' to '{run.Ducts[^1].FullName}', run";

    /// <summary>A point, in metres along and across the rows and above the floor.</summary>
    public static string Of(WayPoint point) =>
        $"({Numerals.Fixed(point.X, 1)}, {Numerals.Fixed(point.Y, 1)}, {Numerals.Fixed(point.Z, 1)}) m";
}
