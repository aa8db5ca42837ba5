using Lanewright.Quantities;

namespace Lanewright.Engineering.Links;

/// <summary>How far bit errors before a code are from the most that it corrects.</summary>
/// <param name="limit">The share that the code still corrects; above 0, below 0.5.</param>
public sealed class CodeMargin(double limit)
{
    private readonly double needed = LevelErrors.QualityFor(limit);

    /// <summary>The distance in dB of the quality that two levels would have with so many errors, as test sets tell it; below zero where
    /// the code is overrun.</summary>
    /// <param name="errors">Share of wrong bits before the code; at least 0, below 0.5.</param>
    public Decibels Of(double errors) =>
        Decibels.OfRatio(LevelErrors.QualityFor(Math.Clamp(errors, Fewest, Most)) / needed) * 2;

    /// <summary>Fewer errors than anybody can wait for.</summary>
    private const double Fewest = 1e-100;

    /// <summary>More, and there is no signal left to speak of.</summary>
    private const double Most = 0.49;
}
