namespace Lanewright.Quantities;

/// <summary>Symbols per second on one lane. Stored as a whole number of symbols per second, so that equal rates are equal. Legal:
/// zero or more. The default is no rate.</summary>
public readonly record struct Baud : IComparable<Baud>
{
    private readonly long raw;

    private Baud(long symbolsPerSecond) =>
        raw = symbolsPerSecond >= 0
            ? symbolsPerSecond
            : throw new ArgumentOutOfRangeException(nameof(symbolsPerSecond), "this quantity is never below zero");

    /// <summary>The value in symbols per second.</summary>
    public long SymbolsPerSecond => raw;

    /// <summary>Makes the quantity from a whole number of symbols per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is below zero.</exception>
    public static Baud FromSymbolsPerSecond(long symbolsPerSecond) => new(symbolsPerSecond);

    /// <summary>The value in gigabaud.</summary>
    public double Gigabaud => raw / 1e9;

    /// <summary>Makes a rate from gigabaud.</summary>
    public static Baud FromGigabaud(double gigabaud) => new(checked((long)Math.Round(Require.NotNegative(gigabaud) * 1e9)));

    /// <summary>Half the symbol rate: the frequency at which copper loss is judged, in gigahertz.</summary>
    public double NyquistGigahertz => raw / 2e9;

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Baud left, Baud right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Baud left, Baud right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Baud left, Baud right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Baud left, Baud right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Baud other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Exact(raw / 1e9) + " GBd";
}
