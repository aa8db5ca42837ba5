namespace Lanewright.Quantities;

/// <summary>Electrical energy. Stored in kilowatt-hours. Legal: zero or more. The default is 0 kWh.</summary>
public readonly record struct Energy : IComparable<Energy>
{
    private readonly double raw;

    private Energy(double kilowattHours) => raw = Require.NotNegative(kilowattHours);

    /// <summary>The value in kilowatt-hours.</summary>
    public double KilowattHours => raw;

    /// <summary>Makes the quantity from a number of kilowatt-hours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Energy FromKilowattHours(double kilowattHours) => new(kilowattHours);

    /// <summary>The sum.</summary>
    public static Energy operator +(Energy left, Energy right) => new(left.raw + right.raw);

    /// <summary>What it costs at a price, rounded to a hundredth.</summary>
    public Money At(EnergyPrice price) => Money.FromHundredths(price.PerKilowattHour * 100m * (decimal)raw);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Energy left, Energy right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Energy left, Energy right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Energy left, Energy right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Energy left, Energy right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Energy other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "kWh");
}
