using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Arithmetic of alternating current. Loads of one power factor; symmetrical voltages.</summary>
public static class ThreePhase
{
    /// <summary>Apparent power in volt-amperes of a balanced three-phase load.</summary>
    /// <param name="volts">Volts between phases.</param>
    /// <param name="current">Current of each phase.</param>
    public static double VoltAmperes(double volts, Amperes current) => Math.Sqrt(3) * volts * current.Value;

    /// <summary>The current that a load draws between two conductors.</summary>
    /// <param name="watts">The load.</param>
    /// <param name="volts">Volts between the two.</param>
    /// <param name="powerFactor">Above 0 and up to 1.</param>
    public static Amperes Between(Watts watts, double volts, double powerFactor) => Amperes.From(watts.Value / (volts * powerFactor));

    /// <summary>Volts between a phase and neutral.</summary>
    /// <param name="volts">Volts between phases.</param>
    public static double ToNeutral(double volts) => volts / Math.Sqrt(3);

    /// <summary>The current of a phase where two loads between phases meet: they are 60 degrees apart, so it is not their sum.</summary>
    /// <param name="one">Load towards one other phase.</param>
    /// <param name="other">Load towards the other.</param>
    public static Amperes OfPhase(Amperes one, Amperes other) => Amperes.From(
        Math.Sqrt((one.Value * one.Value) + (other.Value * other.Value) + (one.Value * other.Value)));
}
