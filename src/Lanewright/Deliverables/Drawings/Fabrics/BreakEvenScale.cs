using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;

namespace Lanewright.Deliverables.Drawings.Fabrics;

/// <summary>Where values and amounts stand on a break-even chart, and which of them are written at the axes.</summary>
internal sealed class BreakEvenScale
{
    private const int Ticks = 6;

    private readonly double left;
    private readonly double right;
    private readonly double top;
    private readonly double bottom;
    private readonly decimal low;
    private readonly decimal high;
    private readonly decimal most;

    /// <summary>Takes what is drawn and the edges of the plot.</summary>
    public BreakEvenScale(BreakEven breakEven, double left, double right, double top, double bottom)
    {
        (this.left, this.right, this.top, this.bottom) = (left, right, top, bottom);
        low = breakEven.Stretches[0].From;
        high = Math.Max(High(breakEven.Stretches[^1]), low + 0.000001m);
        var amounts = breakEven.Stretches.Where(s => s.Shape is not null)
            .SelectMany(s => s.Between.Select(b => b.Cost.Units).Append(s.CostFrom.Units).Append(s.CostTo.Units))
            .DefaultIfEmpty(0)
            .ToList();
        var step = Step(Math.Max(1, amounts.Max() - (amounts.Min() / 2)));
        Least = Math.Floor(amounts.Min() * 0.95m / step) * step;
        most = Math.Max(Least + step, Math.Ceiling(amounts.Max() * 1.02m / step) * step);
        MoneyTicks = Between(Least, most, step);
        ValueTicks = Between(low, high, Step(high - low));
    }

    /// <summary>The amount at the foot of the plot.</summary>
    public decimal Least { get; }

    /// <summary>Amounts at the upright axis.</summary>
    public ImmutableArray<decimal> MoneyTicks { get; }

    /// <summary>Values at the level axis.</summary>
    public ImmutableArray<decimal> ValueTicks { get; }

    /// <summary>Place of a value along the chart.</summary>
    public double X(decimal value) => left + ((right - left) * (double)((Math.Clamp(value, low, high) - low) / (high - low)));

    /// <summary>Place of an amount up the chart.</summary>
    public double Y(decimal amount) => bottom - ((bottom - top) * (double)((amount - Least) / (most - Least)));

    /// <summary>The end of the last stretch; of one where nothing fits only as much as shows that it is there.</summary>
    private decimal High(BreakEvenStretch last) =>
        last.Shape is null && last.From > low ? Math.Min(last.To, last.From + ((last.From - low) / 4)) : last.To;

    /// <summary>A round step that gives a handful of ticks over a range.</summary>
    private static decimal Step(decimal range)
    {
        var raw = range / Ticks;
        var size = (decimal)Math.Pow(10, Math.Floor(Math.Log10((double)raw)));
        var lead = raw / size;
        return size * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    private static ImmutableArray<decimal> Between(decimal from, decimal to, decimal step)
    {
        var ticks = ImmutableArray.CreateBuilder<decimal>();
        for (var tick = Math.Ceiling(from / step) * step; tick <= to; tick += step) ticks.Add(tick);
        return ticks.ToImmutable();
    }
}
