namespace Lanewright.Quantities;

/// <summary>Reads a number that carries its unit in the text, such as <c>2.5 m</c>, <c>400G</c> or <c>-45 dB</c>.</summary>
public static class UnitText
{
    /// <summary>A quantity beyond this, in metres, gigabits per second, watts and so on, is no quantity of a network.</summary>
    public const double Largest = 1e9;

    /// <summary>Units of length with their size in metres.</summary>
    public static IReadOnlyList<UnitScale> Lengths { get; } =
        [new("m", 1), new("mm", 1e-3), new("cm", 1e-2), new("km", 1e3), new("ft", 0.3048), new("in", 0.0254)];

    /// <summary>Units of data rate with their size in gigabits per second.</summary>
    public static IReadOnlyList<UnitScale> Rates { get; } =
        [new("G", 1), new("Gb/s", 1), new("T", 1e3), new("Tb/s", 1e3), new("M", 1e-3), new("Mb/s", 1e-3)];

    /// <summary>Ratios in decibels.</summary>
    public static IReadOnlyList<UnitScale> Ratios { get; } = [new("dB", 1)];

    /// <summary>Levels in dBm.</summary>
    public static IReadOnlyList<UnitScale> Levels { get; } = [new("dBm", 1)];

    /// <summary>Fibre attenuation in dB per kilometre.</summary>
    public static IReadOnlyList<UnitScale> Attenuations { get; } = [new("dB/km", 1), new("dB/m", 1e3)];

    /// <summary>Powers in watts.</summary>
    public static IReadOnlyList<UnitScale> Powers { get; } = [new("W", 1), new("kW", 1e3), new("mW", 1e-3)];

    /// <summary>Weights in kilograms.</summary>
    public static IReadOnlyList<UnitScale> Masses { get; } = [new("kg", 1), new("g", 1e-3), new("lb", 0.45359237)];

    /// <summary>Currents in amperes.</summary>
    public static IReadOnlyList<UnitScale> Currents { get; } = [new("A", 1)];

    /// <summary>Voltages in volts.</summary>
    public static IReadOnlyList<UnitScale> Voltages { get; } = [new("V", 1), new("kV", 1e3)];

    /// <summary>Temperatures in degrees Celsius.</summary>
    public static IReadOnlyList<UnitScale> Temperatures { get; } = [new("degC", 1), new("C", 1)];

    /// <summary>Loads on a floor in kilopascals.</summary>
    public static IReadOnlyList<UnitScale> Pressures { get; } = [new("kPa", 1), new("Pa", 1e-3)];

    /// <summary>Loads on a metre of tray in kilograms.</summary>
    public static IReadOnlyList<UnitScale> LineLoads { get; } = [new("kg/m", 1), new("lb/ft", 0.45359237 / 0.3048)];

    /// <summary>Weights of a length of cable in kilograms a kilometre.</summary>
    public static IReadOnlyList<UnitScale> LineWeights { get; } = [new("kg/km", 1), new("g/m", 1)];

    /// <summary>Shares: per cent.</summary>
    public static IReadOnlyList<UnitScale> Shares { get; } = [new("%", 0.01)];

    /// <summary>Delays in nanoseconds.</summary>
    public static IReadOnlyList<UnitScale> Delays { get; } = [new("ns", 1), new("us", 1e3), new("ps", 1e-3), new("ms", 1e6)];

    /// <summary>Times to repair in hours.</summary>
    public static IReadOnlyList<UnitScale> Repairs { get; } = [new("h", 1), new("min", 1.0 / 60), new("d", 24)];

    /// <summary>Wavelengths in nanometres.</summary>
    public static IReadOnlyList<UnitScale> Wavelengths { get; } = [new("nm", 1)];

    /// <summary>Reads an attenuation in dB per kilometre that may name the wavelength in nanometres it was measured at, such as
    /// <c>0.35 dB/km@1310nm</c>.</summary>
    public static bool TryReadAttenuation(string text, out Attenuation attenuation, out Wavelength? at)
    {
        attenuation = default;
        at = null;
        var parts = text.Split('@');
        if (parts.Length > 2 || !TryRead(parts[0], Attenuations, out var value) || value < 0) return false;
        attenuation = Attenuation.FromDecibelsPerKilometre(value);
        if (parts.Length == 1) return true;
        if (!TryRead(parts[1], Wavelengths, out var nanometres) || nanometres <= 0) return false;
        at = Wavelength.FromNanometres(nanometres);
        return true;
    }

    /// <summary>Frequencies and widths of channels in gigahertz.</summary>
    public static IReadOnlyList<UnitScale> Frequencies { get; } = [new("GHz", 1), new("THz", 1e3), new("MHz", 1e-3)];

    /// <summary>Dispersion of a fibre in ps/(nm km).</summary>
    public static IReadOnlyList<UnitScale> DispersionRates { get; } = [new("ps/nm/km", 1)];

    /// <summary>Polarisation-mode dispersion of a fibre in ps/sqrt(km).</summary>
    public static IReadOnlyList<UnitScale> ModeDispersions { get; } = [new("ps/sqrt(km)", 1)];

    /// <summary>Splits a text into its number and unit and scales the number; false when either part is not understood or the whole
    /// is beyond <see cref="Largest"/>.</summary>
    public static bool TryRead(string text, IReadOnlyList<UnitScale> units, out double value)
    {
        value = 0;
        var trimmed = text.AsSpan().Trim();
        var split = trimmed.Length;
        while (split > 0 && !char.IsAsciiDigit(trimmed[split - 1]) && trimmed[split - 1] != '.') split--;
        var unit = trimmed[split..].Trim();
        if (!Numerals.TryReal(trimmed[..split].Trim(), out var number)) return false;
        foreach (var scale in units)
        {
            if (!unit.SequenceEqual(scale.Name)) continue;
            value = number * scale.Factor;
            return Math.Abs(value) <= Largest;
        }
        return false;
    }
}
