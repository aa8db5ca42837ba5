namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>Levels to heights on the sheet.</summary>
internal sealed class LadderScale
{
    private const double Headroom = 0.09;
    private const double LeastRange = 1;
    private const double TickRoom = 30;

    private LadderScale(double highest, double lowest, double top, double bottom)
    {
        Highest = highest;
        Lowest = lowest;
        Top = top;
        Bottom = bottom;
        Step = StepFor(highest - lowest, Math.Max(2, (int)((bottom - top) / TickRoom)));
    }

    /// <summary>The level at the upper edge.</summary>
    public double Highest { get; }

    /// <summary>The level at the lower edge.</summary>
    public double Lowest { get; }

    /// <summary>Upper edge.</summary>
    public double Top { get; }

    /// <summary>Lower edge.</summary>
    public double Bottom { get; }

    /// <summary>From one tick to the next.</summary>
    public double Step { get; }

    /// <summary>The scale of the way down.</summary>
    public static LadderScale OfWay(LadderModel model, double top, double bottom)
    {
        var limits = model.Limits.Select(l => l.Check.Limit).OfType<double>().Select(l => model.Start - l);
        return Of([model.Start, model.Start - model.Loss, .. limits], top, bottom);
    }

    /// <summary>The scale of the brightest case.</summary>
    public static LadderScale OfTop(LadderTop bright, double top, double bottom) =>
        Of([.. new[] { bright.Launch, bright.Check.Value, bright.Check.Limit }.OfType<double>()], top, bottom);

    private static LadderScale Of(IReadOnlyList<double> levels, double top, double bottom)
    {
        var (high, low) = (levels.Max(), levels.Min());
        // A hundredth of a dB must not look like a cliff.
        var room = ((high - low) * Headroom) + (Math.Max(0, LeastRange - (high - low)) / 2);
        return new LadderScale(high + room, low - room, top, bottom);
    }

    /// <summary>The height of a level.</summary>
    public double Y(double level) => Top + ((Highest - level) / (Highest - Lowest) * (Bottom - Top));

    /// <summary>The levels with a tick.</summary>
    public IEnumerable<double> Ticks()
    {
        for (var i = Math.Ceiling(Lowest / Step); i * Step <= Highest; i++) yield return i * Step;
    }

    /// <summary>One, two or five times a power of ten.</summary>
    private static double StepFor(double range, int most)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(range / most)));
        foreach (var factor in new[] { 1, 2, 5, 10 })
            if (range / (step * factor) <= most) return step * factor;
        return step * 10;
    }
}
