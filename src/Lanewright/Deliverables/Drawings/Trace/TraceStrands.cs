using Lanewright.Engineering.Plant;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>The fibres of a way as lines, each where its position lies: level through plugs and panels, from place to place in cords and
/// trunks. A line keeps the colour of its lane from end to end, so that the eye can follow it; in each trunk the number and the colour of
/// the fibre it runs on stand on it, and what sits at its ends beside the ports.</summary>
internal sealed class TraceStrands
{
    private const double Least = 76;
    private const double Most = 200;
    private const double Room = 18;
    private const double Apart = 11;
    private const double Dot = 3.4;
    private const double DuplexApart = 22;
    private const double TinySize = 9.5;
    private const double WordHeight = 10;

    private readonly CablePath path;
    private readonly TraceCells cells;
    private readonly double middle;
    private readonly double step;
    private readonly int positions;

    /// <summary>Takes what is drawn.</summary>
    /// <param name="path">The way.</param>
    /// <param name="cells">How wide its parts are.</param>
    /// <param name="top">Upper edge of the band of fibres.</param>
    public TraceStrands(CablePath path, TraceCells cells, double top)
    {
        this.path = path;
        this.cells = cells;
        positions = Math.Max(2, path.Fibres.Select(f => Math.Max(f.Start.Position, f.End.Position))
            .Concat(path.Fibres.SelectMany(f => f.Hops).Select(h => Math.Max(h.Near.Position, h.Far.Position)))
            .DefaultIfEmpty(0).Max());
        Height = Math.Clamp(((positions - 1) * Apart) + Room, Least, Most);
        step = Math.Min(Apart, (Height - Room) / (positions - 1));
        middle = top + (Height / 2);
    }

    /// <summary>Height of the band.</summary>
    public double Height { get; }

    /// <summary>Its middle.</summary>
    public double Middle => middle;

    /// <summary>Draws them, and what stands on them.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="isBelowSymbols">Draws the lines; otherwise the words on them.</param>
    public void Draw(Canvas canvas, bool isBelowSymbols)
    {
        if (path.Fibres.IsEmpty && isBelowSymbols) Unknown(canvas);
        foreach (var fibre in path.Fibres)
        {
            if (isBelowSymbols) Line(canvas, fibre);
            else Words(canvas, fibre);
        }
    }

    /// <summary>Where the order is not known, two broken lines stand for all.</summary>
    private void Unknown(Canvas canvas)
    {
        foreach (var y in new[] { middle - Apart, middle + Apart })
            canvas.Path(PathText.Of($"M{cells.Middle(0)} {y}H{cells.Middle(path.Elements.Length - 1)}"), "fine broken");
        var trunk = path.Elements.ToList().FindIndex(e => e.Kind == "trunk");
        if (trunk >= 0) canvas.Text(cells.Middle(trunk), middle + 4, "fibres not known", "tiny alert mid halo");
    }

    private void Line(Canvas canvas, FibreLine fibre)
    {
        var (at, hop) = (fibre.Start, 0);
        var colour = FibreColour.Of(Math.Max(1, at.IsDuplex ? at.Side : at.Position));
        for (var i = 0; i < path.Elements.Length; i++)
        {
            var (x1, x2) = (i == 0 ? cells.Middle(0) : cells.Left(i), i == path.Elements.Length - 1 ? cells.Middle(i) : cells.Right(i));
            var next = at;
            if (path.Elements[i].Kind == "cord") next = hop < fibre.Hops.Length ? fibre.Hops[hop].Near : fibre.End;
            else if (path.Elements[i].Kind == "trunk" && hop < fibre.Hops.Length) next = fibre.Hops[hop++].Far;
            if (next == default)
            {
                canvas.Text(x1 + 6, Y(at) + 4, "goes astray", "tiny alert halo");
                return;
            }
            var line = PathText.Of($"M{x1} {Y(at)}L{x2} {Y(next)}");
            canvas.Path(line, "case");
            canvas.Path(line, "core", colour.Fill);
            if (colour.StripeStyle.Length > 0) canvas.Path(line, colour.StripeStyle);
            at = next;
        }
    }

    private void Words(Canvas canvas, FibreLine fibre)
    {
        var last = path.Elements.Length - 1;
        canvas.Text(cells.Middle(0) - HalfPort - 5, Y(fibre.Start) + 3, FibreWords.Start(fibre), "tiny end");
        var isRight = fibre.IsCrossed && fibre.Lane == fibre.EndLane;
        if (fibre.End != default)
            canvas.Text(cells.Middle(last) + HalfPort + 5, Y(fibre.End) + 3, FibreWords.End(fibre), isRight ? "tiny" : "tiny alert");
        var hop = 0;
        for (var i = 0; i <= last && hop < fibre.Hops.Length; i++)
        {
            if (path.Elements[i].Kind != "trunk") continue;
            var (at, trunk) = (fibre.Hops[hop], path.Patches[hop++].Trunk);
            if (at.Fibre == 0 || at.Far == default) continue;
            // Lines cross in the middle of a trunk: what they are is told where they enter it.
            var (x, share) = (cells.Left(i) + 12, 12 / cells.Width(i));
            var y = Y(at.Near) + ((Y(at.Far) - Y(at.Near)) * share);
            var words = $"{Numerals.Whole(at.Fibre)} {FibreColour.Words(at.Fibre, trunk.Fibres)}";
            canvas.Filled(x, y - (WordHeight / 2), 8 + TextFit.Width(words, TinySize), WordHeight, DrawingStyle.Paper);
            canvas.Circle(x, y, Dot, "lit", FibreColour.Of(at.Fibre).Fill);
            canvas.Text(x + 6, y + 3, words, "tiny");
        }
    }

    /// <summary>Half the width of a port as it is drawn.</summary>
    public const double HalfPort = 19;

    private double Y(FibreSpot spot) => spot.IsDuplex
        ? middle + (spot.Side == 1 ? -DuplexApart / 2 : DuplexApart / 2)
        : middle + ((spot.Position - ((positions + 1) / 2.0)) * step);
}
