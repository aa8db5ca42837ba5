using System.Collections.Immutable;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>The drawings of lines between sites: the map, and for each route its single-line diagram, power and noise along it,
/// the spectrum and the distance from the edge.</summary>
internal static class LineDrawingSet
{
    /// <summary>Routes drawn at most.</summary>
    private const int MostRoutes = 60;

    /// <summary>The name of the map.</summary>
    public const string Map = "M01-map";

    /// <summary>The files.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        if (designed.Plan.Lines.IsEmpty || designed.Plan.Spans.IsEmpty) yield break;
        yield return DrawingFile.Of($"drawings/{Map}.svg", m => new SiteMap(designed).Write(m, Map, isFile: true));
        foreach (var sheet in Sheets(designed).Take(MostRoutes))
        {
            if (sheet.Design.TypeName.Length > 0)
                yield return DrawingFile.Of(
                    $"drawings/{sheet.Id("single-line")}.svg", m => SingleLine(designed, sheet).Write(m, isFile: true));
            if (sheet.Design.Stages.Length > 1)
                yield return DrawingFile.Of($"drawings/{sheet.Id("power")}.svg", m => new PowerDrawing(sheet).Write(m, isFile: true));
            if (HasSpectrum(sheet))
                yield return DrawingFile.Of($"drawings/{sheet.Id("spectrum")}.svg", m => new SpectrumDrawing(sheet).Write(m, isFile: true));
            if (sheet.Design.Stages.Length > 1 && SweepDrawing.Of(sheet) is { } sweep)
                yield return DrawingFile.Of($"drawings/{sheet.Id("sweep")}.svg", m => sweep.Write(m, isFile: true));
        }
    }

    /// <summary>The routes of all lines.</summary>
    public static ImmutableArray<LineSheet> Sheets(DesignedPlan designed) =>
    [
        .. designed.Lines.Value.Lines.SelectMany(l => Enumerable.Range(0, l.Routes.Length).Select(r => new LineSheet(designed.Plan, l, r))),
    ];

    /// <summary>A route by its name; null where there is none.</summary>
    public static LineSheet? SheetOf(DesignedPlan designed, string name) => Sheets(designed).FirstOrDefault(s => s.Name == name);

    /// <summary>The single-line diagram of a route with the cords that lead to it.</summary>
    public static SingleLineDrawing SingleLine(DesignedPlan designed, LineSheet sheet) => new(sheet,
        [.. designed.Lines.Value.Cords.Where(c => c.Line == sheet.Line.Statement.Index && c.Route == sheet.Route)]);

    /// <summary>Whether there is power to draw.</summary>
    public static bool HasSpectrum(LineSheet sheet) => sheet.Design.Channels.Any(c => c.Margin is not null && c.Received is not null);
}
