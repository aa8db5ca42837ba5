using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>Values to places along one direction of a drawing, with round ticks.</summary>
internal sealed class ChartAxis
{
    private const double Headroom = 0.08;
    private readonly double low;
    private readonly double high;
    private readonly double from;
    private readonly double to;

    /// <summary>Takes the values to hold, where the lowest and the highest stand, and about how many ticks.</summary>
    public ChartAxis(IEnumerable<double> values, double from, double to, int ticks, bool isTight = false)
    {
        (this.from, this.to) = (from, to);
        var all = values.DefaultIfEmpty(0).ToList();
        (low, high) = (all.Min(), all.Max());
        if (high - low < 1e-6) (low, high) = (low - 1, high + 1);
        if (!isTight) (low, high) = (low - ((high - low) * Headroom), high + ((high - low) * Headroom));
        var raw = (high - low) / Math.Max(1, ticks);
        var size = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        Step = size * (raw / size <= 1 ? 1 : raw / size <= 2 ? 2 : raw / size <= 5 ? 5 : 10);
    }

    /// <summary>From one tick to the next.</summary>
    public double Step { get; }

    /// <summary>The place of a value.</summary>
    public double At(double value) => from + ((Math.Clamp(value, low, high) - low) / (high - low) * (to - from));

    /// <summary>The round values in between.</summary>
    public IEnumerable<double> Ticks()
    {
        for (var i = Math.Ceiling((low / Step) - 1e-9); i * Step <= high + 1e-9; i++) yield return i * Step;
    }

    /// <summary>A value as it stands at a tick.</summary>
    public static string Text(double value) => Numerals.Plain(Math.Round(value, 4));
}
