namespace Lanewright.Quantities;

/// <summary>The window one optical lane may lie in: from its shortest to its longest wavelength.</summary>
/// <param name="Shortest">The lower end.</param>
/// <param name="Longest">The upper end, not below the lower.</param>
public readonly record struct WavelengthRange(Wavelength Shortest, Wavelength Longest)
{
    /// <summary>The middle of the window.</summary>
    public Wavelength Centre => Wavelength.FromNanometres((Shortest.Nanometres + Longest.Nanometres) / 2);

    /// <summary>Whether some wavelength lies in both windows.</summary>
    public bool Overlaps(WavelengthRange other) => Shortest <= other.Longest && other.Shortest <= Longest;

    /// <summary>Both ends with their unit.</summary>
    public override string ToString() =>
        Numerals.Plain(Shortest.Nanometres) + "-" + Numerals.Plain(Longest.Nanometres) + " nm";
}
