using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>The fibres of a way as lines, each where its position lies: level through plugs and panels, from place to place in cords and
/// trunks.</summary>
internal sealed class TraceStrands(CablePath path, double left, double cell, double middle)
{
    /// <summary>Height of the band of fibres.</summary>
    public const double Height = 76;

    private const double Closest = 3.2;
    private const double Apart = 10;

    private readonly int positions = Math.Max(2, path.Fibres.Select(f => Math.Max(f.Start.Position, f.End.Position))
        .Concat(path.Fibres.SelectMany(f => f.Hops).Select(h => Math.Max(h.Near.Position, h.Far.Position)))
        .DefaultIfEmpty(0).Max());

    /// <summary>Draws them.</summary>
    public void Draw(Canvas canvas)
    {
        if (path.Fibres.IsEmpty) Unknown(canvas);
        foreach (var fibre in path.Fibres) Line(canvas, fibre);
    }

    /// <summary>Where the order is not known, two fibres without a colour stand for all.</summary>
    private void Unknown(Canvas canvas)
    {
        foreach (var y in new[] { middle - Apart, middle + Apart })
        {
            var line = PathText.Of($"M{left + (cell / 2)} {y}H{left + (cell * (path.Elements.Length - 0.5))}");
            canvas.Path(line, "case");
            canvas.Path(line, "core", DrawingStyle.Paper);
        }
    }

    private void Line(Canvas canvas, FibreLine fibre)
    {
        var (at, hop) = (fibre.Start, 0);
        for (var i = 0; i < path.Elements.Length; i++)
        {
            var (x1, x2) = (left + (cell * (i == 0 ? 0.5 : i)), left + (cell * (i == path.Elements.Length - 1 ? i + 0.5 : i + 1)));
            var next = at;
            var colour = Number(at);
            if (path.Elements[i].Kind == "cord") next = hop < fibre.Hops.Length ? fibre.Hops[hop].Near : fibre.End;
            else if (path.Elements[i].Kind == "trunk" && hop < fibre.Hops.Length)
            {
                next = fibre.Hops[hop].Far;
                colour = Math.Max(1, fibre.Hops[hop].Fibre);
                hop++;
            }
            if (next == default) return;
            Stroke(canvas, PathText.Of($"M{x1} {Y(at)}L{x2} {Y(next)}"), FibreColour.Of(Math.Max(1, colour)));
            at = next;
        }
    }

    /// <summary>In a cord fibres follow its positions; of a duplex cord the first is that of the transmitter's side.</summary>
    private static int Number(FibreSpot spot) => spot.IsDuplex ? spot.Side : spot.Position;

    private static void Stroke(Canvas canvas, string line, FibreColour colour)
    {
        canvas.Path(line, "case");
        canvas.Path(line, "core", colour.Fill);
    }

    private double Y(FibreSpot spot)
    {
        if (spot.IsDuplex) return middle + (spot.Side == 1 ? -Apart / 2 : Apart / 2);
        var step = Math.Clamp((Height - 16) / (positions - 1), Closest, Apart);
        return middle + ((spot.Position - ((positions + 1) / 2.0)) * step);
    }
}
