using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Panels;

/// <summary>Panels from the front: places from left to right and downwards, in each the trunk that ends there and its ports, filled where a
/// cord is plugged in.</summary>
internal sealed class PanelDrawing(DesignedPlan designed, PanelFronts fronts, ImmutableArray<int> panels)
{
    private const double RowHeight = 50;
    private const double HeadHeight = 24;
    private const double Gap = 14;
    private const double Dot = 7.2;
    private const double DotRadius = 2.7;
    private const double TinySize = 9.5;
    private const double ArrayWidth = 24;

    private readonly PlaceLabels labels = new(designed.Plan);

    /// <summary>Writes the drawing.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var bottom = Sheet.Top + panels.Sum(HeightOf);
        var block = TitleBlock.Of(designed.Plan, id, ("panels", Numerals.Whole(panels.Length), 0.8),
            ("places", $"{Numerals.Whole(Places().Count(p => p.Trunk is not null))} of {Numerals.Whole(Places().Count())} taken", 1.4),
            ("ports", $"{Numerals.Whole(Places().Sum(p => p.Used.Length))} of {Numerals.Whole(Places().Sum(p => p.Ports))} in use", 1.4));
        var head = new SheetHead(id, "Fronts of panels", "Filled ports are patched, hollow ones free; a bar is an open array. Not to "
            + "scale. Cap what is free, and never look into it.", Description());
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            var y = Sheet.Top;
            foreach (var panel in panels)
            {
                Panel(canvas, panel, y);
                y += HeightOf(panel);
            }
        });
    }

    private IEnumerable<PanelPlace> Places() => panels.SelectMany(fronts.Of);

    private int RowsOf(int panel) => Math.Max(1, designed.Plan.Devices.Group(panel).Model.Units);

    private double HeightOf(int panel) => HeadHeight + (RowsOf(panel) * RowHeight) + Gap;

    private void Panel(Canvas canvas, int panel, double y)
    {
        var places = fronts.Of(panel);
        var rows = RowsOf(panel);
        var columns = Math.Max(1, (places.Count + rows - 1) / rows);
        var width = (Sheet.Width - (2 * Sheet.Margin)) / columns;
        var name = designed.Plan.Devices.Name(panel);
        canvas.Text(Sheet.Margin, y + 14, name, "bold");
        var place = (fronts.HasLines(panel) ? "lines between sites end here too: places without a trunk may be theirs; " : "")
            + $"{labels.Device(panel)}, {designed.Plan.Devices.Group(panel).Model.Name}";
        canvas.Text(Sheet.Width - Sheet.Margin, y + 14, place, "small soft end");
        canvas.Box(Sheet.Margin, y + HeadHeight - 4, Sheet.Width - (2 * Sheet.Margin), rows * RowHeight, "box");
        for (var i = 0; i < places.Count; i++)
            Place(canvas, places[i], Sheet.Margin + (i % columns * width), y + HeadHeight - 4 + (i / columns * RowHeight), width);
    }

    private static void Place(Canvas canvas, PanelPlace place, double x, double y, double width)
    {
        canvas.Box(x + 1.5, y + 1.5, width - 3, RowHeight - 3, place.Trunk is null ? "faint" : place.IsOpen ? "hollow" : "block");
        canvas.Text(x + 5, y + 13, Numerals.Padded(place.Slot, 2), "tiny soft");
        if (place.Trunk is not { } trunk) return;
        var name = trunk.NameOf(place.Number);
        canvas.Text(x + 19, y + 13, TextFit.Middle(name, width - 24, TinySize), "tiny");
        if (place.IsOpen)
        {
            canvas.Box(x + (width / 2) - (ArrayWidth / 2), y + 26, ArrayWidth, 9, place.Used.IsEmpty ? "hollow" : "full");
            return;
        }
        var across = Math.Max(1, Math.Min(place.Ports, (int)((width - 8) / Dot)));
        for (var port = 1; port <= place.Ports; port++)
        {
            var (column, row) = ((port - 1) % across, (port - 1) / across);
            canvas.Circle(x + 8 + (column * Dot), y + 24 + (row * (Dot + 1)), DotRadius, place.Used.Contains(port) ? "full" : "hollow");
        }
    }

    private string Description() => string.Join(" ", panels.Select(p =>
        $"Panel {designed.Plan.Devices.Name(p)}: {Numerals.Whole(fronts.Of(p).Count(s => s.Trunk is not null))} of "
        + $"{Numerals.Whole(fronts.Of(p).Count)} places taken, {Numerals.Whole(fronts.Of(p).Sum(s => s.Used.Length))} ports in use"
        + (fronts.HasLines(p) ? ", and lines between sites end there too." : ".")));
}
