using System.Text;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>Draws the way down, the limits and the margins.</summary>
internal sealed class LadderPainter(Canvas canvas, LadderModel model, LadderScale scale, LadderScale? brightScale)
{
    /// <summary>Where the scale stands.</summary>
    public const double Axis = 92;

    /// <summary>Where the transmitter stands.</summary>
    public const double Transmitter = 132;

    /// <summary>Where the receiver stands.</summary>
    public const double Receiver = 744;

    private const double PlotRight = 836;
    private const double LabelLeft = 868;
    private const double ExtraStep = 76;
    private const double LeastRoom = 34;
    private double Level => model.Start - model.Loss;

    /// <summary>Where the fibre or wire ends: what lies at the receiver itself is drawn after it.</summary>
    private double WayRight => Receiver - (ExtraStep * model.Steps.Count(s => IsAtReceiver(s.Kind)));

    /// <summary>Draws it.</summary>
    public void Draw()
    {
        Grid(scale);
        Names();
        if (brightScale is not null) Bright(brightScale);
        Limits();
        Way();
        Margins();
        Labels();
    }

    private void Grid(LadderScale grid)
    {
        foreach (var level in grid.Ticks())
        {
            var y = grid.Y(level);
            canvas.Line(Axis, y, PlotRight, y, "faint dots");
            canvas.Line(Axis - 5, y, Axis, y, "fine");
            canvas.Text(Axis - 9, y + 4, Numerals.Plain(level), "small end");
        }
        canvas.Line(Axis, grid.Top, Axis, grid.Bottom, "ink");
        canvas.Text(Axis - 9, grid.Top - 8, model.IsAbsolute ? "dBm" : "dB", "small bold end");
        foreach (var x in new[] { Transmitter, Receiver }) canvas.Line(x, grid.Top, x, grid.Bottom + 6, "fine");
    }

    private void Names()
    {
        foreach (var (x, words) in new[] { (Transmitter, model.Ends.Start), (Receiver, model.Ends.End) })
        {
            canvas.Text(x, scale.Bottom + 22, words, "small bold mid");
        }
    }

    /// <summary>The staircase: slopes for glass and wire, drops for everything that sits in one place.</summary>
    private void Way()
    {
        var path = new StringBuilder();
        var (x, level) = (Transmitter, model.Start);
        var lastWords = double.NegativeInfinity;
        canvas.Begin("way");
        path.Append(PathText.Of($"M{x} {scale.Y(level)}"));
        var marks = new List<(double X, double Upper, double Lower, LadderStepKind Kind, string Words)>();
        foreach (var step in model.Steps)
        {
            var upper = scale.Y(level);
            level -= step.Loss;
            if (step.Kind == LadderStepKind.Stretch) x = Transmitter + (step.Place * (WayRight - Transmitter));
            var isExtra = IsAtReceiver(step.Kind);
            if (isExtra) path.Append(PathText.Of($"L{x += ExtraStep / 2} {upper}"));
            path.Append(PathText.Of($"L{x} {scale.Y(level)}"));
            if (step.Kind != LadderStepKind.Stretch)
            {
                var figure = isExtra || x - lastWords >= LeastRoom ? Numerals.Plain(step.Loss) : "";
                if (figure.Length > 0) lastWords = x;
                marks.Add((x, upper, scale.Y(level), step.Kind, figure));
            }
            if (isExtra) path.Append(PathText.Of($"L{x += ExtraStep / 2} {scale.Y(level)}"));
        }
        canvas.Path(path.ToString(), "heavy");
        foreach (var mark in marks) Mark(mark.X, mark.Upper, mark.Lower, mark.Kind, mark.Words);
        canvas.Circle(Transmitter, scale.Y(model.Start), 4, "full");
        canvas.Circle(Receiver, scale.Y(Level), 4, "full");
        var words = model.IsAbsolute ? $"darkest case: lowest launch {Unit(model.Start)}, most loss" : "most loss, against the transmitter";
        canvas.Text(Transmitter + 8, scale.Top - 8, words, "small");
        canvas.End();
    }

    private static bool IsAtReceiver(LadderStepKind kind) => kind is LadderStepKind.Attenuator or LadderStepKind.Ageing;

    private void Mark(double x, double upper, double lower, LadderStepKind kind, string words)
    {
        canvas.Begin("drop " + Word(kind));
        var middle = (upper + lower) / 2;
        Glyph(canvas, x, middle, kind);
        if (IsAtReceiver(kind)) canvas.Text(x, upper - 7, $"{Word(kind)} {words}", "tiny mid halo");
        else if (lower - upper >= 18) canvas.Text(x + 9, lower - 5, words, "tiny halo");
        else canvas.Text(x + 5, Math.Min(upper, middle - 5) - 3, words, "tiny halo");
        canvas.End();
    }

    private void Limits()
    {
        foreach (var limit in model.Limits)
        {
            if (limit.Check.Limit is not { } most) continue;
            var y = scale.Y(model.Start - most);
            canvas.Begin("limit");
            canvas.Line(Transmitter, y, PlotRight, y, "heavy broken");
            canvas.End();
        }
    }

    private void Bright(LadderScale bright)
    {
        if (model.Top is not { Check.Value: { } value } top) return;
        Grid(bright);
        canvas.Begin("bright");
        canvas.Line(Transmitter, bright.Y(top.Launch), Receiver, bright.Y(value), "ink broken");
        canvas.Circle(Transmitter, bright.Y(top.Launch), 3.5, "hollow");
        canvas.Circle(Receiver, bright.Y(value), 3.5, "hollow");
        canvas.Text(Transmitter + 8, bright.Top - 8, $"brightest case: highest launch {Unit(top.Launch)}, least loss", "small");
        if (top.Check.Limit is { } most)
        {
            var y = bright.Y(most);
            canvas.Line(Receiver - 46, y, PlotRight, y, top.Check.Verdict == Verdict.Fail ? "act" : "heavy");
            for (var x = Receiver - 40.0; x < PlotRight; x += 10) canvas.Line(x, y, x + 6, y - 6, "fine");
        }
        canvas.End();
    }

    /// <summary>From the level that arrives to each limit.</summary>
    private void Margins()
    {
        var x = Receiver + 30;
        foreach (var limit in model.Limits)
        {
            if (limit.Check.Limit is not { } most || limit.Check.Margin is null) continue;
            var isOutside = limit.Check.Verdict == Verdict.Fail;
            var (from, to) = (scale.Y(Level), scale.Y(model.Start - most));
            canvas.Begin("margin");
            canvas.Line(Receiver, from, x + 6, from, "fine");
            canvas.Line(x, from, x, to, isOutside ? "act" : "ink");
            foreach (var y in new[] { from, to }) canvas.Line(x - 4, y + 4, x + 4, y - 4, isOutside ? "act" : "ink");
            canvas.End();
            x += 26;
        }
    }

    private void Labels()
    {
        var labels = LadderLabels.Of(model, scale, brightScale, Sheet.Width - Sheet.Margin - LabelLeft);
        foreach (var (label, top) in LadderLabel.Spread(labels, (brightScale ?? scale).Top - 6, scale.Bottom + 8))
        {
            var middle = top + (label.Height / 2);
            canvas.Path(PathText.Of($"M{PlotRight + 4} {label.Y}L{LabelLeft - 16} {middle}H{LabelLeft - 6}"), "fine");
            for (var i = 0; i < label.Lines.Length; i++)
                canvas.Text(LabelLeft, top + 11 + (i * LadderLabel.Step), label.Lines[i], i < label.Heads ? label.Style : "small soft");
        }
    }

    /// <summary>The mark of a kind of step.</summary>
    public static void Glyph(Canvas canvas, double x, double y, LadderStepKind? kind)
    {
        switch (kind)
        {
            case LadderStepKind.Stretch:
                canvas.Line(x - 7, y - 2, x + 7, y + 2, "heavy");
                break;
            case LadderStepKind.MatedPair:
                canvas.Box(x - 5, y - 5, 5, 10, "box");
                canvas.Box(x, y - 5, 5, 10, "box");
                break;
            case LadderStepKind.Splice:
                canvas.Circle(x, y, 3.2, "hollow");
                break;
            case LadderStepKind.Attenuator:
                canvas.Box(x - 6, y - 6, 12, 12, "box");
                break;
            case LadderStepKind.CopperEnd:
                canvas.Box(x - 4, y - 6, 8, 12, "block");
                break;
        }
    }

    private static string Word(LadderStepKind kind) => kind switch
    {
        LadderStepKind.MatedPair => "mated-pair",
        LadderStepKind.Splice => "splice",
        LadderStepKind.Attenuator => "attenuator",
        LadderStepKind.Ageing => "ageing",
        LadderStepKind.CopperEnd => "copper-end",
        _ => "stretch",
    };

    private string Unit(double value) => Numerals.Unit(value, model.IsAbsolute ? "dBm" : "dB");
}
