namespace Lanewright.Quantities;

/// <summary>Comparisons that do not take the last places of a sum or product for a difference: ten times 4.5 mm is 45 mm.</summary>
public static class Rounding
{
    /// <summary>Whether a value is above a limit by more than rounding.</summary>
    public static bool IsAbove(double value, double limit) => value - limit > Step(limit);

    /// <summary>Whether a value is below a limit by more than rounding.</summary>
    public static bool IsBelow(double value, double limit) => limit - value > Step(limit);

    /// <summary>The whole number that a value reaches, also where it falls short of it by rounding.</summary>
    public static double Whole(double value) => IsBelow(value, Math.Floor(value) + 1) ? Math.Floor(value) : Math.Floor(value) + 1;

    /// <summary>What a distance from a limit may be on the wrong side.</summary>
    /// <remarks>Of large limits a part of them: doubles have no finer steps there.</remarks>
    private static double Step(double limit) => Small * Math.Max(1, Math.Abs(limit));

    private const double Small = 1e-9;
}
