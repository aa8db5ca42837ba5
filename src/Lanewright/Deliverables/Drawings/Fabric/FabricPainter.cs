using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Draws boxes and lines of a picture of a fabric.</summary>
internal sealed class FabricPainter(
    Canvas canvas, DemandStudy study, FabricPicture picture, FabricLayout layout, FabricView? view = null)
{
    private const double Thinnest = 1.1;
    private const double Thickest = 7;

    /// <summary>Width of a line by what it carries.</summary>
    public static double WidthOf(Share utilisation) => Thinnest + ((Thickest - Thinnest) * Math.Min(1, utilisation.Value));

    /// <summary>A line over its limit: told by its light core as well as by its colour.</summary>
    public static void Over(Canvas canvas, string path)
    {
        canvas.Stroke(path, DrawingStyle.Accent, Thickest + 1);
        canvas.Path(path, "gap");
    }

    /// <summary>How high a line between two boxes of one tier is drawn by its curve.</summary>
    public static double RiseOf(double x1, double x2) => Math.Min(34, 14 + (Math.Abs(x1 - x2) / 14));

    /// <summary>Draws it.</summary>
    public void Draw()
    {
        canvas.Begin("links");
        // The fullest come last and lie on top.
        foreach (var edge in picture.Edges) Edge(edge);
        canvas.End();
        foreach (var tier in layout.Tiers) Tier(tier);
        canvas.Begin("boxes");
        for (var node = 0; node < picture.Nodes.Length; node++) Box(node);
        canvas.End();
        var figures = new LoadFigures(canvas, picture, layout);
        foreach (var tier in layout.Tiers) figures.Below(tier);
    }

    private void Edge(PictureEdge edge)
    {
        var path = PathOf(edge);
        var leads = view is not null && canvas.BeginWay(view.LineAddress(edge), view.LineWords(edge, picture), FabricView.Stays);
        if (leads) canvas.Path(path, "grip");
        Line(edge, path);
        if (leads) canvas.End();
    }

    /// <summary>Where some of the links of a line are down a broken line lies over it; where all are, only that is left.</summary>
    private void Line(PictureEdge edge, string path)
    {
        var down = view?.LinksDown(edge) ?? 0;
        if (down < edge.Links) Carrying(edge, path);
        if (down > 0) canvas.Path(path, "ink broken");
    }

    private void Carrying(PictureEdge edge, string path)
    {
        if (edge.Worst.Value > study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding) Over(canvas, path);
        else Full(path, edge.Worst);
    }

    private void Full(string path, Share share)
    {
        canvas.Rim(path, WidthOf(share) + Canvas.RimOver);
        canvas.Stroke(path, LoadColour.Of(share), WidthOf(share));
    }

    private string PathOf(PictureEdge edge)
    {
        var (upper, lower) = (picture.Nodes[edge.Upper].Tier, picture.Nodes[edge.Lower].Tier);
        var (x1, x2) = (layout.Centre(edge.Upper), layout.Centre(edge.Lower));
        if (upper != lower)
            return PathText.Of($"M{x1} {layout.Top(upper) + layout.Height(upper)}L{x2} {layout.Top(lower)}");
        // Links within a tier arch over it; those within a box make a small loop.
        var y = layout.Top(upper);
        if (edge.Upper == edge.Lower) (x1, x2) = (x1 - 12, x2 + 12);
        var rise = RiseOf(x1, x2);
        return PathText.Of($"M{x1} {y}C{x1} {y - rise} {x2} {y - rise} {x2} {y}");
    }

    private void Tier(int tier)
    {
        var y = layout.Top(tier);
        var count = picture.Nodes.Where(n => n.Tier == tier).Sum(n => n.Count);
        canvas.Text(Sheet.Margin, y + 14, tier == 0 ? "hosts" : $"tier {Numerals.Whole(tier)}", "bold");
        canvas.Text(Sheet.Margin, y + 29, tier == 0 ? Numerals.Grouped(count) + " hosts" : LoadWords.Switches(count), "small soft");
        foreach (var built in study.Fabric.Oversubscription.Where(o => o.Tier == tier))
            canvas.Text(Sheet.Margin, y + 44, $"{Numerals.Plain(Math.Round(built.Ratio, 2))}:1 below to above", "small soft");
    }

    private void Box(int index)
    {
        var node = picture.Nodes[index];
        var (x, y, width, height) = (layout.Centre(index), layout.Top(node.Tier), layout.Width(index), layout.Height(node.Tier));
        var leads = view is not null && canvas.BeginWay(view.BoxAddress(node), view.BoxWords(node), FabricView.Stays);
        canvas.Box(x - (width / 2), y, width, height, node.Tier == 0 ? "block" : "box", 3);
        BoxWords(node, x, y, width, height);
        if (view?.DevicesDown(node) is > 0 and var down) Down(x - (width / 2), y, width, height, down, node.Count);
        if (leads) canvas.End();
    }

    /// <summary>A box with something of it down is crossed out; where it stands for several, a figure says how many.</summary>
    private void Down(double left, double top, double width, double height, long down, long all)
    {
        canvas.Box(left, top, width, height, "heavy", 3);
        canvas.Line(left, top + height, left + width, top, "ink");
        if (all > 1) canvas.Text(left + width, top - 4, $"{Numerals.Grouped(down)} down", "small bold halo end");
    }

    private void BoxWords(PictureNode node, double x, double y, double width, double height)
    {
        var count = node.Count > 1 ? $"x {Numerals.Grouped(node.Count)}" : "";
        if (height < FabricLayout.HighBox)
        {
            var name = TextFit.Short(node.Name, width - 8, 12, bold: true);
            canvas.Text(x, y + (count.Length > 0 ? 17 : 25), name, "bold mid");
            canvas.Text(x, y + 33, count, "small soft mid");
            return;
        }
        var words = count.Length > 0 ? $"{node.Name} {count}" : node.Name;
        canvas.Upright(x + 4, y + height - 6, TextFit.Short(words, height - 12, width < 20 ? 9.5 : 12), width < 20 ? "tiny" : "");
    }
}
