namespace Lanewright.Engineering.Links;

/// <summary>Units of levels: average power and modulation amplitude are both told in dBm and never compared with each other.</summary>
public static class CheckUnits
{
    /// <summary>Average power.</summary>
    public const string Average = "dBm";

    /// <summary>Outer optical modulation amplitude.</summary>
    public const string Amplitude = "dBm OMA";
}
