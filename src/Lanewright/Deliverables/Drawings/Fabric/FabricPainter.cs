using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Draws boxes and lines of a picture of a fabric.</summary>
internal sealed class FabricPainter(
    Canvas canvas, DemandStudy study, FabricPicture picture, FabricLayout layout, FabricView? view = null)
{
    private const double Thinnest = 1.1;
    private const double Thickest = 7;
    private const int MostFigures = 12;
    private const int MostRingFigures = 30;
    private const double AlongRing = 0.34;
    private const double ManyLines = 60;
    private const double ThinnestOfMany = 0.22;
    private const double WithCore = 0.5;
    private static readonly double[] Aside = [0, -0.1, 0.1, -0.19, 0.19, 0.28, 0.37];

    private readonly List<(double Left, double Top, double Width, double Height)> taken = [];

    /// <summary>Where lines are many all are drawn thinner, so that they can be told from one another.</summary>
    private readonly double thin = Math.Clamp(ManyLines / Math.Max(1, picture.Edges.Length), ThinnestOfMany, 1);
    private const double NearLower = 0.66;
    private const double LeastFigure = 0.0005;

    /// <summary>Width of a line by what it carries.</summary>
    public static double WidthOf(Share utilisation) => Thinnest + ((Thickest - Thinnest) * Math.Min(1, utilisation.Value));

    /// <summary>A line over its limit: told by its light core as well as by its colour.</summary>
    public static void Over(Canvas canvas, string path, double thin = 1)
    {
        canvas.Stroke(path, DrawingStyle.Accent, (Thickest + 1) * thin);
        if (thin >= WithCore) canvas.Path(path, "gap");
    }

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
        // Figures keep off the boxes as off one another.
        for (var node = 0; node < picture.Nodes.Length; node++)
            taken.Add((layout.Centre(node) - (layout.Width(node) / 2), layout.TopOf(node), layout.Width(node),
                layout.Height(picture.Nodes[node].Tier)));
        foreach (var tier in layout.Tiers) Figures(tier);
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
        if (edge.Worst.Value > study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding) Over(canvas, path, thin);
        else canvas.Stroke(path, LoadColour.Of(edge.Worst), Math.Max(Thinnest / 2, WidthOf(edge.Worst) * thin));
    }

    private string PathOf(PictureEdge edge)
    {
        var (upper, lower) = (picture.Nodes[edge.Upper].Tier, picture.Nodes[edge.Lower].Tier);
        var (x1, x2) = (layout.Centre(edge.Upper), layout.Centre(edge.Lower));
        if (upper != lower)
            return PathText.Of($"M{x1} {layout.TopOf(edge.Upper) + layout.Height(upper)}L{x2} {layout.TopOf(edge.Lower)}");
        if (layout.IsRing(upper) && edge.Upper != edge.Lower)
            return PathText.Of($"M{x1} {MiddleOf(edge.Upper)}L{x2} {MiddleOf(edge.Lower)}");
        // Links within a tier arch over it; those within a box make a small loop.
        var y = layout.TopOf(edge.Upper);
        if (edge.Upper == edge.Lower) (x1, x2) = (x1 - 12, x2 + 12);
        var rise = Math.Min(34, 14 + (Math.Abs(x1 - x2) / 14));
        return PathText.Of($"M{x1} {y}C{x1} {y - rise} {x2} {y - rise} {x2} {y}");
    }

    private double MiddleOf(int node) => layout.TopOf(node) + (layout.Height(picture.Nodes[node].Tier) / 2);

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
        var (x, y, width, height) = (layout.Centre(index), layout.TopOf(index), layout.Width(index), layout.Height(node.Tier));
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

    /// <summary>Figures on the lines below a tier while there are few enough to read, at the fullest ones otherwise.</summary>
    private void Figures(int tier)
    {
        if (layout.IsRing(tier)) RingFigures(tier);
        var below = picture.Edges.Where(e => picture.Nodes[e.Upper].Tier == tier && picture.Nodes[e.Lower].Tier < tier).ToList();
        if (below.Count > MostFigures) return;
        // Figures stand where the lines are furthest apart: near the row with more boxes.
        var isWideBelow = below.Select(e => e.Lower).Distinct().Count() >= below.Select(e => e.Upper).Distinct().Count();
        var along = isWideBelow ? NearLower : 1 - NearLower;
        foreach (var edge in below.Where(e => e.Worst.Value >= LeastFigure))
        {
            var lower = picture.Nodes[edge.Lower].Tier;
            var (top, bottom) = (layout.TopOf(edge.Upper) + layout.Height(tier), layout.TopOf(edge.Lower));
            Figure(edge, layout.Centre(edge.Upper), top, layout.Centre(edge.Lower), bottom, along);
        }
    }

    /// <summary>Figures of links within a ring, nearer to one end so that those of crossing links do not meet in the middle.</summary>
    private void RingFigures(int tier)
    {
        var within = picture.Edges.Where(e => e.Upper != e.Lower && picture.Nodes[e.Upper].Tier == tier
            && picture.Nodes[e.Lower].Tier == tier && e.Worst.Value >= LeastFigure).ToList();
        if (within.Count > MostRingFigures) return;
        foreach (var edge in within)
            Figure(edge, layout.Centre(edge.Upper), MiddleOf(edge.Upper), layout.Centre(edge.Lower), MiddleOf(edge.Lower), AlongRing);
    }

    /// <summary>A figure on a gap in its line, so that no line strikes it through, moved along the line where another stands
    /// already.</summary>
    private void Figure(PictureEdge edge, double x1, double y1, double x2, double y2, double along)
    {
        var (percent, words) = (LoadWords.Percent(edge.Worst), picture.IsByClass ? ClassWords(edge) : "");
        var width = Math.Max(TextFit.Width(percent, 11, bold: true), TextFit.Width(words, 10)) + 4;
        var height = words.Length > 0 ? 28 : 14;
        (double X, double Y) At(double part) => (x1 + ((x2 - x1) * part), y1 + ((y2 - y1) * part) + 4);
        bool IsFree((double X, double Y) at) => taken.All(t => at.X + (width / 2) < t.Left || at.X - (width / 2) > t.Left + t.Width
            || at.Y - 11 > t.Top + t.Height || at.Y - 11 + height < t.Top);
        var free = Aside.Select(a => At(along + a)).Where(IsFree).Take(1).ToList();
        var (x, y) = free.Count > 0 ? free[0] : At(along);
        taken.Add((x - (width / 2), y - 11, width, height));
        Gapped(x, y, percent, 11, "small bold mid");
        if (words.Length > 0) Gapped(x, y + 13, words, 10, "tiny soft mid");
    }

    private void Gapped(double x, double y, string words, double size, string style)
    {
        var width = TextFit.Width(words, size, bold: true) + 4;
        canvas.Box(x - (width / 2), y - size, width, size + 3, "paper");
        canvas.Text(x, y, words, style);
    }

    /// <summary>The figure is that of the fullest link; where others are emptier, their mean says so.</summary>
    private static string ClassWords(PictureEdge edge)
    {
        var links = $"{Numerals.Grouped(edge.Links)} {(edge.Links == 1 ? "link" : "links")}";
        return edge.Worst.Value - edge.Mean.Value > MeanApart ? $"mean {LoadWords.Percent(edge.Mean)}, {links}" : links;
    }

    private const double MeanApart = 0.01;
}
