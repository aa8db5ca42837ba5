using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Trace;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Structured cabling: trunks between panels, what is patched through each, and the way of the light port by port.</summary>
internal static class PlantSheet
{
    private const int MostRows = 500;
    private const int MostTabs = 60;
    private const string Trunk = "trunk";

    /// <summary>What is told of trunks first.</summary>
    private static readonly ImmutableArray<string> Ends =
    [
        Trunk, "count", "cable", "length-m", "fibres", "from-panel", "from-rack", "from-places", "to-panel", "to-rack", "to-places",
        "cassette", "cassette-at", "method", "polarity", "existing",
    ];

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Plant", "The plan cannot be read yet.");
        if (designed.Plan.Trunks.IsEmpty)
            return paper.Nothing("Plant", "The plan has no trunks: every cable runs from device to device. Devices whose model is a "
                + "panel, and the section 'trunks', describe cabling that stays, and 'through' patches links through it.");
        var trunks = designed.Plan.Trunks;
        if (paper.Thing.Length > 0 && trunks.All(t => t.Name != paper.Thing))
            return paper.Unknown("Plant", $"There is no trunk '{paper.Thing}'.");
        var wanted = paper.Thing.Length > 0 ? paper.Thing : trunks[0].Name;
        paper.Heading("Plant");
        Tabs.Write(paper, "plant", [.. trunks.Take(MostTabs).Select(t => (t.Name, t.Name))], wanted);
        Trace(paper, designed, wanted);
        Trunks(paper, designed);
        Rows(paper, PatchesView.Of(designed), $"what is patched through {wanted}", row => row.Any(cell => IsOf(cell.Text, wanted)));
        return true;
    }

    /// <summary>Trunks in two tables: one would be wider than any sheet.</summary>
    private static void Trunks(SheetPaper paper, DesignedPlan designed)
    {
        var view = TrunksView.Of(designed);
        Rows(paper, FittedTable.Only(view, Ends), "trunks: where they end and how they are made", _ => true);
        var rest = FittedTable.Only(view, [Trunk, .. view.Columns.Select(c => c.Name).Where(c => !Ends.Contains(c))]);
        var states = designed.Plant.Value.Trunks;
        PaperTable.Write(paper.Markup, rest, "trunks: what they carry, may lose and lie in; decibels open what they are made of", MostRows,
            (column, text, row) => column.Contains("-dB", StringComparison.Ordinal)
                ? paper.Site.To("why", WhyTrunk.Name(states[row].Trunk.Name))
                : Address(paper, column, text));
    }

    private static string Address(SheetPaper paper, string column, string text) =>
        !column.EndsWith("-m", StringComparison.Ordinal) && paper.Now.Places?.Of(text) is { } found ? paper.Site.To(found.Page) : "";

    /// <summary>Whether a cell names one of a group's trunks, such as the third of <c>rows</c>: rows-3.</summary>
    private static bool IsOf(string text, string trunk) =>
        text.LastIndexOf('-') is > 0 and var dash && text.AsSpan(0, dash).SequenceEqual(trunk)
        && Numerals.TryWhole(text.AsSpan(dash + 1), out _);

    private static void Rows(SheetPaper paper, TableView view, string caption, Func<Cell[], bool> isShown) =>
        PaperTable.Write(paper.Markup, view with { Rows = () => view.Rows().Where(isShown) }, caption, MostRows,
            (column, text) => Address(paper, column, text));

    /// <summary>The way of the first cable through the trunk; others are told port by port in the table below.</summary>
    private static void Trace(SheetPaper paper, DesignedPlan designed, string trunk)
    {
        var ways = designed.Plant.Value.Ways.Where(w => w.Way.Legs.Any(l => l.Trunk.Name == trunk));
        if (ways.Select(w => TraceSet.Followed(designed, w)).OfType<TracedCable>().FirstOrDefault() is { } cable)
            paper.Figure(() => new TraceDrawing(designed.Plan, "trace", cable).Write(paper.Markup, isFile: false));
        else
            paper.Markup.Element("p", $"Nothing is patched through {trunk} yet.", ("class", "soft"));
    }
}
