namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Draws the paths of the cable: what leaves the first end in whole lines with filled arrows, the way back broken with hollow
/// ones.</summary>
internal sealed class StrandPainter(Canvas canvas, RibbonLayout layout)
{
    private const double Lead = 24;
    private const double PlugHalf = 13;
    private const double Coupler = 58;
    private const double AttenuatorHalf = 7;

    /// <summary>Draws all of them.</summary>
    public void Draw()
    {
        foreach (var strand in layout.Model.Strands) Draw(strand);
        if (layout.Model.IsUnmade)
        {
            var y = (layout.Near.Top + layout.Near.Bottom) / 2;
            canvas.Box((Sheet.Width / 2) - 72, y - 14, 144, 28, "box");
            canvas.Text(Sheet.Width / 2, y + 4, "no cord joins these", "mid alert");
        }
        if (layout.Model.HasCouplers)
            foreach (var far in layout.Far) CouplerOf(far);
    }

    private static double Start(EndGeometry end) => end.Columns.Plug + (end.End.Body == EndBody.Module ? PlugHalf : 0);

    private void Draw(Strand strand)
    {
        var far = layout.Far[strand.FarEnd];
        var (x1, x2) = (Start(layout.Near), Sheet.Width - Start(far));
        var (y1, y2) = (layout.Near.Row(strand.NearRow), far.Row(strand.FarRow));
        if (layout.Model.HasCouplers && !layout.Model.IsUnmade)
        {
            // Beyond the coupler another fan-out has its own colours.
            canvas.Line(x2 - Coupler, y2, x2, y2, strand.Way == StrandWay.Back ? "ink broken" : "ink");
            x2 -= Coupler;
        }
        var path = PathOf(x1, y1, x2, y2);
        if (layout.Model.IsUnmade)
        {
            canvas.Path(path, "faint dots");
            return;
        }
        canvas.Begin("strand " + (strand.Way switch { StrandWay.Forth => "forth", StrandWay.Back => "return", _ => "both" }));
        var back = strand.Way == StrandWay.Back ? " back" : "";
        switch (strand.Kind)
        {
            case StrandKind.Fibre when strand.Fibre == 0:
                canvas.Path(path, "heavy" + back);
                break;
            case StrandKind.Fibre:
                Fibre(path, FibreColour.Of(strand.Fibre), back);
                break;
            case StrandKind.Pair:
                canvas.Path(path, "pair" + back);
                canvas.Path(path, "gap");
                break;
            default:
                canvas.Path(path, "ink" + back);
                break;
        }
        Mated(x1, y1, x2, y2);
        Heads(strand, x1, y1, x2, y2);
        Attenuators(strand, x1, y1, x2, y2);
        canvas.End();
    }

    private static string PathOf(double x1, double y1, double x2, double y2)
    {
        if (Math.Abs(y1 - y2) < 0.01) return PathText.Of($"M{x1} {y1}H{x2}");
        var (a, b) = (x1 + Lead, x2 - Lead);
        var middle = (a + b) / 2;
        return PathText.Of($"M{x1} {y1}H{a}C{middle} {y1} {middle} {y2} {b} {y2}H{x2}");
    }

    private void Fibre(string path, FibreColour colour, string back)
    {
        canvas.Path(path, "case" + back);
        canvas.Path(path, "core" + back, colour.Fill);
        if (colour.StripeStyle.Length > 0) canvas.Path(path, colour.StripeStyle);
    }

    private void Heads(Strand strand, double x1, double y1, double x2, double y2)
    {
        const double size = 6.5;
        // A head that enters an end touches it; one that leaves stands off.
        var forth = strand.Way != StrandWay.Back;
        var near = strand.Way == StrandWay.Forth ? x1 + Lead - size : x1 + size;
        var far = forth ? x2 - size : x2 - Lead + size;
        if (strand.Way != StrandWay.Both)
        {
            Arrow.Head(canvas, near, y1, size, forth, forth);
            Arrow.Head(canvas, far, y2, size, forth, forth);
            return;
        }
        Arrow.Head(canvas, near, y1, size, toRight: false, isFilled: false);
        Arrow.Head(canvas, far, y2, size, toRight: true, isFilled: true);
    }

    private void Attenuators(Strand strand, double x1, double y1, double x2, double y2)
    {
        if (strand.Way != StrandWay.Back && layout.Model.AttenuatesFar) Attenuator(x2 - Lead - AttenuatorHalf - 4, y2);
        if (strand.Way != StrandWay.Forth && layout.Model.AttenuatesNear) Attenuator(x1 + Lead + AttenuatorHalf + 4, y1);
    }

    /// <summary>Mated pairs on the way, where the way is one straight line for each path.</summary>
    private void Mated(double x1, double y1, double x2, double y2)
    {
        if (Math.Abs(y1 - y2) > 0.01) return;
        const double clear = 46;
        var count = layout.Model.MatedPairs;
        for (var i = 1; i <= count; i++)
        {
            var x = x1 + clear + ((x2 - x1 - (2 * clear)) * i / (count + 1));
            canvas.Box(x - 5, y1 - 5.5, 5, 11, "box mated");
            canvas.Box(x, y1 - 5.5, 5, 11, "box mated");
        }
    }

    private void Attenuator(double x, double y)
    {
        canvas.Box(x - AttenuatorHalf, y - AttenuatorHalf, 2 * AttenuatorHalf, 2 * AttenuatorHalf, "box attenuator");
        foreach (var stroke in new[] { x - 4, x, x + 4 }) canvas.Line(stroke, y - 3.5, stroke, y + 3.5, "fine");
    }

    /// <summary>Where the leg of one fan-out meets the leg of another.</summary>
    private void CouplerOf(EndGeometry far)
    {
        var (top, bottom) = (far.Row(0) - 9, far.Row(far.End.Plug.Rows.Length - 1) + 9);
        var x = Sheet.Width - Start(far) - Coupler;
        canvas.Box(x, top, 9, bottom - top, "box coupler");
        canvas.Box(x + 9, top, 9, bottom - top, "box coupler");
    }
}
