namespace Lanewright.Quantities;

/// <summary>A rate of data, as an Ethernet MAC carries it. Stored as a whole number of bits per second, so that equal rates are
/// equal. Legal: zero or more. The default is no rate.</summary>
public readonly record struct BitRate : IComparable<BitRate>
{
    private readonly long raw;

    private BitRate(long bitsPerSecond) =>
        raw = bitsPerSecond >= 0
            ? bitsPerSecond
            : throw new ArgumentOutOfRangeException(nameof(bitsPerSecond), "this quantity is never below zero");

    /// <summary>The value in bits per second.</summary>
    public long BitsPerSecond => raw;

    /// <summary>Makes the quantity from a whole number of bits per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is below zero.</exception>
    public static BitRate FromBitsPerSecond(long bitsPerSecond) => new(bitsPerSecond);

    /// <summary>The value in gigabits per second.</summary>
    public double Gigabits => raw / 1e9;

    /// <summary>Makes a rate from gigabits per second.</summary>
    public static BitRate FromGigabits(double gigabits) => new(checked((long)Math.Round(Require.NotNegative(gigabits) * 1e9)));

    /// <summary>The rate taken a number of times.</summary>
    public static BitRate operator *(BitRate rate, int times) => new(checked(rate.raw * times));

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(BitRate left, BitRate right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(BitRate left, BitRate right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(BitRate left, BitRate right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(BitRate left, BitRate right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(BitRate other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() =>
        (raw % 1_000_000_000 == 0 ? Numerals.Whole(raw / 1_000_000_000) : Numerals.Plain(raw / 1e9)) + "G";
}
