namespace Lanewright.Quantities;

/// <summary>The door of every quantity: refuses values no calculation can mean.</summary>
internal static class Require
{
    /// <summary>Returns the value, or throws when it is NaN or infinite.</summary>
    public static double Finite(double value) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), "a quantity is a finite number");

    /// <summary>Returns the value, or throws when it is not finite or below zero.</summary>
    public static double NotNegative(double value) =>
        Finite(value) >= 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), "this quantity is never below zero");
}
