using Lanewright.Quantities;

namespace Lanewright.Engineering.Links;

/// <summary>How far bit errors before a code are from the most that it corrects.</summary>
public static class CodeMargin
{
    /// <summary>The distance in dB of the quality that two levels would have with so many errors, as test sets tell it; below zero where
    /// the code is overrun.</summary>
    /// <param name="errors">Share of wrong bits before the code; at least 0, below 0.5.</param>
    /// <param name="limit">The share that the code still corrects; above 0, below 0.5.</param>
    public static Decibels Of(double errors, double limit)
    {
        var quality = LevelErrors.QualityFor(Math.Clamp(errors, Fewest, Most));
        return Decibels.OfRatio(quality / LevelErrors.QualityFor(limit)) * 2;
    }

    /// <summary>Fewer errors than anybody can wait for.</summary>
    private const double Fewest = 1e-100;

    /// <summary>More, and there is no signal left to speak of.</summary>
    private const double Most = 0.49;
}
