using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Writes how full lines are beside them: no figure over another, and as few lines as can be below one.</summary>
internal sealed class LoadFigures(Canvas canvas, FabricPicture picture, FabricLayout layout)
{
    private const int Most = 12;
    private const int MostWithin = 30;
    private const double NearLower = 0.66;
    private const double NearEnd = 0.34;
    private const double Least = 0.0005;
    private const double MeanApart = 0.01;
    private const double Size = 10.5;
    private const double SmallSize = 9.5;
    private const double Step = 13;

    /// <summary>Both sides of a line, and farther off it where other lines come near.</summary>
    private static readonly double[] Sides = [-1, 1, -1.5, 1.5];

    /// <summary>How high the middle of an arch stands of what its curve is drawn by.</summary>
    private const double Arch = 0.75;

    /// <summary>Room kept about a figure, since lines are wider than the way they go.</summary>
    private const double Clear = 5;

    private static readonly double[] Along =
        [0, 0.04, -0.04, 0.08, -0.08, 0.12, -0.12, 0.16, -0.16, 0.2, -0.2, 0.24, -0.24, -0.28, -0.32, -0.36, -0.4, -0.44, -0.48];

    /// <summary>Figures on the lines below a tier while there are few enough to read.</summary>
    public void Below(int tier)
    {
        if (layout.IsRing(tier)) Within(tier);
        var below = picture.Edges.Where(e => picture.Nodes[e.Upper].Tier == tier && picture.Nodes[e.Lower].Tier < tier).ToList();
        if (below.Count == 0 || below.Count > Most) return;
        var deepest = below.Min(e => picture.Nodes[e.Lower].Tier);
        var room = new LabelRoom(new LabelBox(FabricLayout.Left, Foot(tier), Sheet.Width, layout.Top(deepest)));
        foreach (var edge in below) room.Take(Ends(edge).From, Ends(edge).To);
        foreach (var edge in Inside(tier)) room.Take(Middles(edge).From, Middles(edge).To);
        for (var node = 0; node < picture.Nodes.Length; node++) room.Take(BoxOf(node));
        foreach (var edge in picture.Edges.Where(e => picture.Nodes[e.Upper].Tier == picture.Nodes[e.Lower].Tier)) TakeArch(room, edge);
        // Figures stand where the lines are furthest apart: near the row with more boxes.
        var isWideBelow = below.Select(e => e.Lower).Distinct().Count() >= below.Select(e => e.Upper).Distinct().Count();
        foreach (var edge in below.Where(e => e.Worst.Value >= Least).OrderByDescending(e => e.Worst))
            Write(room, edge, Ends(edge), isWideBelow ? NearLower : 1 - NearLower);
    }

    /// <summary>Figures of links within a ring, nearer to one end so that those of crossing links do not meet in the middle.</summary>
    private void Within(int tier)
    {
        var inside = Inside(tier).ToList();
        if (inside.Count == 0 || inside.Count > MostWithin) return;
        var nodes = Enumerable.Range(0, picture.Nodes.Length).Where(n => picture.Nodes[n].Tier == tier).ToList();
        var room = new LabelRoom(new LabelBox(
            FabricLayout.Left, layout.Top(tier), Sheet.Width, nodes.Max(layout.TopOf) + layout.Height(tier)));
        foreach (var edge in picture.Edges.Where(e => e.Upper != e.Lower && picture.Nodes[e.Upper].Tier == tier))
        {
            var (from, to) = picture.Nodes[edge.Lower].Tier == tier ? Middles(edge) : Ends(edge);
            room.Take(from, to);
        }
        foreach (var node in nodes) room.Take(BoxOf(node));
        foreach (var edge in inside.Where(e => e.Worst.Value >= Least).OrderByDescending(e => e.Worst))
            Write(room, edge, Middles(edge), NearEnd);
    }

    /// <summary>Links between the boxes of a tier that stand in a ring.</summary>
    private IEnumerable<PictureEdge> Inside(int tier) => layout.IsRing(tier)
        ? picture.Edges.Where(e => e.Upper != e.Lower && picture.Nodes[e.Upper].Tier == tier && picture.Nodes[e.Lower].Tier == tier)
        : [];

    private double Foot(int tier) => layout.Top(tier) + layout.Height(tier);

    private ((double X, double Y) From, (double X, double Y) To) Ends(PictureEdge edge) =>
    (
        (layout.Centre(edge.Upper), layout.TopOf(edge.Upper) + layout.Height(picture.Nodes[edge.Upper].Tier)),
        (layout.Centre(edge.Lower), layout.TopOf(edge.Lower)));

    private ((double X, double Y) From, (double X, double Y) To) Middles(PictureEdge edge) => (MiddleOf(edge.Upper), MiddleOf(edge.Lower));

    private (double X, double Y) MiddleOf(int node) =>
        (layout.Centre(node), layout.TopOf(node) + (layout.Height(picture.Nodes[node].Tier) / 2));

    private LabelBox BoxOf(int node)
    {
        var (tier, half) = (picture.Nodes[node].Tier, layout.Width(node) / 2);
        var top = layout.TopOf(node);
        return new LabelBox(layout.Centre(node) - half, top, layout.Centre(node) + half, top + layout.Height(tier));
    }

    private void TakeArch(LabelRoom room, PictureEdge edge)
    {
        if (layout.IsRing(picture.Nodes[edge.Upper].Tier)) return;
        var (a, b) = (layout.Centre(edge.Upper), layout.Centre(edge.Lower));
        var y = layout.Top(picture.Nodes[edge.Upper].Tier) - (Arch * FabricPainter.RiseOf(a, b));
        room.Take((Math.Min(a, b), y), (Math.Max(a, b), y));
    }

    private void Write(LabelRoom room, PictureEdge edge, ((double X, double Y) From, (double X, double Y) To) ends, double along)
    {
        var figure = LoadWords.Percent(edge.Worst);
        var words = picture.IsByClass ? ClassWords(edge) : "";
        var wide = Math.Max(TextFit.Width(figure, Size, bold: true), TextFit.Width(words, SmallSize)) + Clear;
        var high = (words.Length > 0 ? Step + Size : Size) + Clear;
        var places = Beside(edge, ends, along, wide, high).ToList();
        // A figure is never left out: without room it stands where it belongs, over whatever is there.
        var place = room.Place(places) ?? places[0];
        // The halo of letters leaves a line below to be seen between them, so that it would strike them through.
        if (room.IsOverLine(place)) canvas.Box(place.Middle.X - (wide / 2), place.Top, wide, high, "paper");
        canvas.Text(place.Middle.X, place.Top + (Clear / 2) + Size - 1, figure, "small bold halo mid");
        if (words.Length > 0) canvas.Text(place.Middle.X, place.Bottom - (Clear / 2) - 1, words, "tiny soft halo mid");
    }

    /// <summary>Places on both sides of a line, from where figures stand best, clear of its width.</summary>
    private static IEnumerable<LabelBox> Beside(
        PictureEdge edge, ((double X, double Y) From, (double X, double Y) To) ends, double along, double wide, double high)
    {
        var (from, to) = ends;
        var length = Math.Max(1, Plane.Distance(from, to));
        var (across, up) = (-(to.Y - from.Y) / length, (to.X - from.X) / length);
        var off = (Math.Abs(across) * wide / 2) + (Math.Abs(up) * high / 2) + (FabricPainter.WidthOf(edge.Worst) / 2) + 3;
        foreach (var share in Along.Select(a => along + (along > 0.5 ? a : -a)))
        {
            var (x, y) = (from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
            foreach (var side in Sides)
                yield return LabelBox.About(x + (side * off * across), y + (side * off * up), wide, high);
        }
    }

    /// <summary>The figure is that of the fullest link; where others are emptier, their mean says so.</summary>
    private static string ClassWords(PictureEdge edge)
    {
        var links = $"{Numerals.Grouped(edge.Links)} {(edge.Links == 1 ? "link" : "links")}";
        return edge.Worst.Value - edge.Mean.Value > MeanApart ? $"mean {LoadWords.Percent(edge.Mean)}, {links}" : links;
    }
}
