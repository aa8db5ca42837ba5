using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Lines;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>The spectrum at the receivers: power of every channel, and the margin of each below.</summary>
internal sealed class SpectrumDrawing(LineSheet sheet)
{
    private const double Left = 88;
    private const double Right = Sheet.Width - Sheet.Margin - 20;
    private const double PowerTop = Sheet.Top + 26;
    private const double PowerBottom = PowerTop + 190;
    private const double MarginTop = PowerBottom + 60;
    private const double MarginBottom = MarginTop + 170;
    private const double Widest = 46;
    private const double Bar = 0.62;
    private const double Roomy = 44;

    private readonly ImmutableArray<LineChannel> channels = sheet.Design.Channels;

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var head = new SheetHead(sheet.Id("spectrum"), $"Spectrum of {sheet.Line.Statement.Name} at the receivers",
            $"{sheet.Words}: power of each channel, and the margin that its signal over noise leaves", Description());
        Sheet.Write(markup, head, sheet.Block, MarginBottom + 48, isFile, Draw);
    }

    private double Spacing => channels.Length > 1 ? channels[1].Frequency.Terahertz - channels[0].Frequency.Terahertz : 0.1;

    private void Draw(Canvas canvas)
    {
        var along = new ChartAxis(
            [channels[0].Frequency.Terahertz - Spacing, channels[^1].Frequency.Terahertz + Spacing], Left, Right, 8, isTight: true);
        var first = channels[0].Frequency.Terahertz;
        var width = Math.Min(Widest, (along.At(first + Spacing) - along.At(first)) * Bar);
        Power(canvas, along, width);
        Margins(canvas, along, width);
        foreach (var tick in along.Ticks())
        {
            canvas.Line(along.At(tick), MarginBottom + 4, along.At(tick), MarginBottom + 9, "fine");
            canvas.Text(along.At(tick), MarginBottom + 24, ChartAxis.Text(tick), "small mid");
        }
        canvas.Text(Right, MarginBottom + 42, "THz", "small end soft");
    }

    private void Power(Canvas canvas, ChartAxis along, double width)
    {
        var limits = sheet.Design.Checks.Where(c => c.Name is LineCheckNames.ReceiveLow or LineCheckNames.ReceiveHigh)
            .Select(c => c.Limit).OfType<double>().ToList();
        var powers = new ChartAxis([.. channels.Select(c => c.Received?.Dbm).OfType<double>(), .. limits], PowerBottom, PowerTop, 5);
        Axis(canvas, powers, PowerTop, PowerBottom, "power at the receiver, dBm; red: the window of the type");
        foreach (var limit in limits) canvas.Line(Left, powers.At(limit), Right, powers.At(limit), "act");
        foreach (var channel in channels)
        {
            if (channel.Received is not { } level) continue;
            var x = along.At(channel.Frequency.Terahertz);
            canvas.Box(x - (width / 2), powers.At(level.Dbm), width, PowerBottom - powers.At(level.Dbm), "shade3");
            if (width >= Roomy * Bar) canvas.Text(x, powers.At(level.Dbm) - 6, LineSheet.Of(level.Dbm, ""), "small mid halo");
        }
    }

    private void Margins(Canvas canvas, ChartAxis along, double width)
    {
        var known = channels.SelectMany(c => new[] { c.Margin?.Value, c.ExpectedMargin?.Value }).OfType<double>();
        var margins = new ChartAxis([.. known, 0], MarginBottom, MarginTop, 5);
        Axis(canvas, margins, MarginTop, MarginBottom,
            channels.Any(c => c.ExpectedMargin is not null)
                ? "margin, dB: bars by the plain model, which decides; marks as expected with symbols as they are"
                : "margin, dB, by the plain model, which decides; none is told as expected over such spans");
        foreach (var channel in channels)
        {
            if (channel.Margin is not { } margin) continue;
            var x = along.At(channel.Frequency.Terahertz);
            var (top, bottom) = (margins.At(Math.Max(0, margin.Value)), margins.At(Math.Min(0, margin.Value)));
            canvas.Box(x - (width / 2), top, width, Math.Max(0.5, bottom - top), margin.Value < 0 ? "actfill" : "shade2");
            if (channel.ExpectedMargin is { } expected)
                canvas.Line(x - (width / 2) - 2, margins.At(expected.Value), x + (width / 2) + 2, margins.At(expected.Value), "heavy");
            if (width >= Roomy * Bar) canvas.Text(x, bottom + 14, LineSheet.Of(margin.Value, ""), "small mid halo");
        }
        canvas.Line(Left, margins.At(0), Right, margins.At(0), "ink");
    }

    private static void Axis(Canvas canvas, ChartAxis axis, double top, double bottom, string title)
    {
        canvas.Text(Left, top - 10, title, "small soft");
        foreach (var tick in axis.Ticks())
        {
            canvas.Line(Left, axis.At(tick), Right, axis.At(tick), "faint");
            canvas.Text(Left - 8, axis.At(tick) + 4, ChartAxis.Text(tick), "small end");
        }
        canvas.Line(Left, top, Left, bottom, "ink");
    }

    private string Description() => string.Join(" ", channels.Select(c => $"{c.Frequency}: "
        + (c.Received is { } level ? LineSheet.Of(level.Dbm, "dBm") : "power not known")
        + (c.Margin is { } margin ? $", margin {LineSheet.Of(margin.Value, "dB")}." : ".")));
}
