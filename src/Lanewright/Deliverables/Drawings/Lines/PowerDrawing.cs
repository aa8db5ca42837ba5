using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>A line from end to end: what stands on it, the power of its worst channel along the way, and its signal over noise. Spans are
/// as wide as they are long; equipment, which has no length, has a fixed width.</summary>
internal sealed class PowerDrawing(LineSheet sheet)
{
    private const double Left = 88;
    private const double Right = Sheet.Width - Sheet.Margin - 12;
    private const double StripY = Sheet.Top + 48;
    private const double PowerTop = StripY + 76;
    private const double PowerBottom = PowerTop + 210;
    private const double NoiseTop = PowerBottom + 58;
    private const double NoiseBottom = NoiseTop + 150;
    private const double CautionY = NoiseBottom + 64;
    private const double MostEquipment = 84;

    /// <summary>Points beyond which there is no room for a text at each.</summary>
    private const int Many = 16;

    private const double Small = 10.5;

    private readonly FoldedStages folded = FoldedStages.Of(sheet.Design.Stages, Many);

    /// <summary>Room for texts: of two that would lie over one another the second is left out.</summary>
    private readonly LabelRoom room = new(new LabelBox(0, 0, Sheet.Width, CautionY));

    private ImmutableArray<LineStage> Stages => folded.Stages;

    private bool HasNoise => sheet.Design.Stages.Any(s => s.OverNoise is not null);

    /// <summary>Where the charts end: without noise there is one.</summary>
    private double ChartBottom => HasNoise ? NoiseBottom : PowerBottom;

    private double Foot => ChartBottom + (CautionY - NoiseBottom);

    private int Equipment => Enumerable.Range(1, Stages.Length - 1).Count(i => !IsSpan(i));

    private double EquipmentWidth => Math.Min(MostEquipment, (Right - Left) * 0.5 / Math.Max(1, Equipment));

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var head = new SheetHead(sheet.Id("power"), $"{(HasNoise ? "Power and noise" : "Power")} along {sheet.Line.Statement.Name}",
            $"{string.Join(" - ", sheet.Line.Routes[sheet.Route].Sites.Select(s => s.Name))}, "
                + (HasNoise ? "the channel with the least margin" : "a channel at the lowest level of its transmitter")
            + (sheet.Design.Worst is { } worst ? $" at {worst.Frequency}" : ""), Description());
        Sheet.Write(markup, head, sheet.Block, Foot + 8, isFile, Draw);
    }

    private void Draw(Canvas canvas)
    {
        var lowest = sheet.Design.LowestReceived?.Dbm;
        var levels = new ChartAxis(
            [.. Stages.Select(s => s.Level.Dbm), .. lowest is { } l ? [l] : Array.Empty<double>()], PowerBottom, PowerTop, 6);
        Axis(canvas, levels, PowerTop, PowerBottom, "power of the channel, dBm");
        if (lowest is { } floor)
        {
            canvas.Line(Left, levels.At(floor), Right, levels.At(floor), "act");
            canvas.Text(Left + 6, levels.At(floor) - 5, $"needed at the receiver {LineSheet.Of(floor, "dBm")}", "alert small halo");
        }
        Strip(canvas);
        Way(canvas, s => levels.At(s.Level.Dbm), s => LineSheet.Of(s.Level.Dbm, "dBm"));
        if (HasNoise) Noise(canvas);
        Distances(canvas);
        var caution = TextFit.Lines(LineCautions.Short, Sheet.Width - (2 * Sheet.Margin), 10.5, 2);
        canvas.Lines(Sheet.Margin, Foot - 8, caution, 14, "small soft");
    }

    private void Noise(Canvas canvas)
    {
        var kept = sheet.Line.Statement.LeastMargin;
        var needed = (sheet.Design.Worst?.Required + (sheet.Design.Worst?.Penalty ?? default) + kept)?.Value;
        var noises = Stages.Select(s => s.OverNoise?.Value).OfType<double>().ToList();
        // What begins far above all others would press the rest flat.
        var noise = new ChartAxis([.. noises, .. needed is { } n ? [n] : Array.Empty<double>()], NoiseBottom, NoiseTop, 5);
        Axis(canvas, noise, NoiseTop, NoiseBottom, "signal over noise in 12.5 GHz, dB");
        if (needed is { } limit)
        {
            canvas.Line(Left, noise.At(limit), Right, noise.At(limit), "act");
            canvas.Text(Left + 6, noise.At(limit) - 5, $"needed {LineSheet.Of(limit, "dB")}{Of(kept)}", "alert small halo");
        }
        Way(canvas, s => s.OverNoise is { } over ? noise.At(over.Value) : null,
            s => s.OverNoise is { } over ? LineSheet.Of(over.Value, "dB") : "");
    }

    private static void Axis(Canvas canvas, ChartAxis axis, double top, double bottom, string title)
    {
        canvas.Text(Left, top - 18, title, "small soft");
        foreach (var tick in axis.Ticks())
        {
            canvas.Line(Left, axis.At(tick), Right, axis.At(tick), "faint");
            canvas.Text(Left - 8, axis.At(tick) + 4, ChartAxis.Text(tick), "small end");
        }
        canvas.Line(Left, top, Left, bottom, "ink");
    }

    private string Of(Decibels kept)
    {
        var penalty = sheet.Design.Worst?.Penalty ?? default;
        return (penalty.Value > 0 ? $", {LineSheet.Of(penalty.Value, "dB")} of it for penalties" : "")
            + (kept.Value > 0 ? $", {LineSheet.Of(kept.Value, "dB")} of it to be kept" : "");
    }

    private bool IsSpan(int stage) => Stages[stage].At > Stages[stage - 1].At;

    /// <summary>How wide a stretch of fibre is against others: by its length, but where some are left out, all alike.</summary>
    private double Weight(int stage) => !IsSpan(stage) ? 0
        : folded.Gap < 0 ? (Stages[stage].At - Stages[stage - 1].At).Metres
        : stage == folded.Gap ? 2 : 1;

    /// <summary>Where a stage begins and ends; the transmitter is a point.</summary>
    private (double From, double To) Columns(int stage)
    {
        var spans = Enumerable.Range(1, Stages.Length - 1).Where(IsSpan).ToList();
        var free = Right - Left - (Equipment * EquipmentWidth);
        var all = spans.Sum(Weight);
        // A patch of fibre is as wide as its figures, however short it is; what is left is divided among the others.
        var narrow = spans.Where(i => free * Weight(i) / all < LeastSpan).ToList();
        if (narrow.Count * LeastSpan > free / 2) narrow.Clear();
        var (left, rest) = (free - (narrow.Count * LeastSpan), all - narrow.Sum(Weight));
        var from = Left;
        for (var i = 1; i < stage; i++) from += WidthOf(i);
        return (from, from + WidthOf(stage));

        double WidthOf(int i) => !IsSpan(i) ? EquipmentWidth : narrow.Contains(i) ? LeastSpan : left * Weight(i) / rest;
    }

    private const double LeastSpan = 56;

    private void Way(Canvas canvas, Func<LineStage, double?> height, Func<LineStage, string> words)
    {
        var path = "";
        if (height(Stages[0]) is { } first)
        {
            canvas.Circle(Left, first, 3, "full");
            canvas.Text(Left + 6, first - 8, words(Stages[0]), "small halo");
            room.Take(new LabelBox(Left, first - 18, Left + 6 + TextFit.Width(words(Stages[0]), Small), first - 6));
        }
        for (var i = 1; i < Stages.Length; i++)
        {
            if (height(Stages[i]) is not { } to) continue;
            var (x1, x2) = Columns(i);
            var from = height(Stages[i - 1]) ?? to;
            if (i == folded.Gap)
            {
                canvas.Line(x1, from, x2, to, "heavy broken");
                continue;
            }
            path += PathText.Of($"M{x1} {from}L{x2} {to}");
            canvas.Circle(x2, to, 3, "full");
            var isUp = to <= from;
            Text(canvas, Math.Min(x2, Right - 24), to + (isUp ? -8 : 17), words(Stages[i]), "small mid halo");
        }
        canvas.Path(path, "heavy");
    }

    /// <summary>Writes a text, on a crowded line only where there is room.</summary>
    private void Text(Canvas canvas, double x, double y, string text, string style)
    {
        if (room.IsFree(x, y, text, Small)) canvas.Text(x, y, text, style);
    }

    /// <summary>The single-line diagram: multiplexers as trapezia, amplifiers as triangles, fibre with loops.</summary>
    private void Strip(Canvas canvas)
    {
        for (var i = 1; i < Stages.Length; i++)
        {
            var (x1, x2) = Columns(i);
            var middle = (x1 + x2) / 2;
            canvas.Line(x1, StripY, x2, StripY, "ink");
            if (i == folded.Gap)
            {
                canvas.Box(x1 + 3, StripY - 3, x2 - x1 - 6, 6, "paper");
                Text(canvas, middle, StripY + 4, folded.Words, "small bold mid");
                continue;
            }
            if (IsSpan(i)) Loops(canvas, middle, Stages.Length > Many ? 0 : 1);
            else if (Stages[i].What is "multiplexer" or "demultiplexer") Multiplexer(canvas, middle, Stages[i].What == "multiplexer");
            else if (Stages[i].What == LineStage.Pad) canvas.Box(middle - 6, StripY - 9, 12, 18, "box");
            else if (Stages[i].What == "receiver") canvas.Box(x2 - 22, StripY - 11, 22, 22, "box");
            else canvas.Path(PathText.Of($"M{middle - 11} {StripY - 13}L{middle + 13} {StripY}L{middle - 11} {StripY + 13}Z"), "box");
            Text(canvas, middle, StripY + 32, TextFit.Short(Name(i), Math.Max(40, x2 - x1 - 4), Small), "small mid");
            var figures = TextFit.Lines(Figure(i), Math.Max(60, x2 - x1 - 4), Small, 2);
            for (var k = 0; k < figures.Length; k++)
                Text(canvas, middle, StripY - 6 - (13 * (figures.Length - k)), figures[k], "small mid soft");
        }
        canvas.Box(Left - 22, StripY - 11, 22, 22, "box");
        var count = sheet.Design.Channels.Length;
        canvas.Text(Left - 30, StripY + 4, count > 1 ? Numerals.Whole(count) + " x" : "", "small end");
    }

    private static void Loops(Canvas canvas, double middle, int beside)
    {
        for (var loop = -beside; loop <= beside; loop++) canvas.Circle(middle + (loop * 9), StripY - 8, 8, "fine");
    }

    private static void Multiplexer(Canvas canvas, double x, bool isFirst)
    {
        var (wide, narrow) = isFirst ? (-9, 9) : (9, -9);
        var (a, b) = (x + wide, x + narrow);
        canvas.Path(PathText.Of($"M{a} {StripY - 17}L{b} {StripY - 7}L{b} {StripY + 7}L{a} {StripY + 17}Z"), "box");
    }

    private string Name(int stage) => Stages[stage].What switch
    {
        "multiplexer" => "mux",
        "demultiplexer" => "demux",
        var other => other,
    };

    private string Figure(int stage)
    {
        var here = Stages[stage];
        if (IsSpan(stage))
        {
            var before = Stages[stage - 1];
            return $"{LineSheet.Of((here.At - before.At).Kilometres, "km")}, {LineSheet.Of((before.Level - here.Level).Value, "dB")}";
        }
        if (here.What == LineStage.Pad) return LineSheet.Of((Stages[stage - 1].Level - here.Level).Value, "dB");
        var amplifier = sheet.Design.Amplifiers.FirstOrDefault(a => a.Place == here.What);
        if (amplifier is null) return "";
        var pad = amplifier.Pad.Value > 0 ? $", pad {LineSheet.Of(amplifier.Pad.Value, "dB")}" : "";
        return (LineSheet.Of(amplifier.Gain.Value, "dB") + pad).Replace(" dB", "\u00a0dB", StringComparison.Ordinal);
    }

    private void Distances(Canvas canvas)
    {
        for (var i = 1; i < Stages.Length; i++)
        {
            if (!IsSpan(i)) continue;
            var (x1, x2) = Columns(i);
            canvas.Line(x1, ChartBottom + 4, x1, ChartBottom + 10, "fine");
            canvas.Line(x2, ChartBottom + 4, x2, ChartBottom + 10, "fine");
            Text(canvas, x1, ChartBottom + 24, LineSheet.Of(Stages[i - 1].At.Kilometres, "km"), "small mid");
            if (i == Stages.Length - 1 || !IsSpan(i + 1))
                Text(canvas, x2, ChartBottom + 24, LineSheet.Of(Stages[i].At.Kilometres, "km"), "small mid");
        }
    }

    private string Description() => string.Join(" ", sheet.Design.Stages.Select(s =>
        $"Behind {s.What} at {LineSheet.Of(s.At.Kilometres, "km")}: {LineSheet.Of(s.Level.Dbm, "dBm")}"
        + (s.OverNoise is { } over ? $", {LineSheet.Of(over.Value, "dB")} over noise." : ".")));
}
