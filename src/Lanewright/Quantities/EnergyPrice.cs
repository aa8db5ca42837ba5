namespace Lanewright.Quantities;

/// <summary>A price of electrical energy in the plan's currency unit. Stored for a kilowatt-hour, not rounded to hundredths as money is:
/// a tariff has more places. Legal: zero or more. The default is nothing.</summary>
public readonly record struct EnergyPrice : IComparable<EnergyPrice>
{
    private readonly decimal raw;

    private EnergyPrice(decimal perKilowattHour) =>
        raw = perKilowattHour >= 0
            ? perKilowattHour
            : throw new ArgumentOutOfRangeException(nameof(perKilowattHour), "this quantity is never below zero");

    /// <summary>The price of a kilowatt-hour.</summary>
    public decimal PerKilowattHour => raw;

    /// <summary>Makes a price from that of a kilowatt-hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is below zero.</exception>
    public static EnergyPrice FromPerKilowattHour(decimal perKilowattHour) => new(perKilowattHour);

    /// <summary>Whether the left price is smaller.</summary>
    public static bool operator <(EnergyPrice left, EnergyPrice right) => left.raw < right.raw;

    /// <summary>Whether the left price is larger.</summary>
    public static bool operator >(EnergyPrice left, EnergyPrice right) => left.raw > right.raw;

    /// <summary>Whether the left price is smaller or equal.</summary>
    public static bool operator <=(EnergyPrice left, EnergyPrice right) => left.raw <= right.raw;

    /// <summary>Whether the left price is larger or equal.</summary>
    public static bool operator >=(EnergyPrice left, EnergyPrice right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(EnergyPrice other) => raw.CompareTo(other.raw);

    /// <summary>The price of a kilowatt-hour, as people write it.</summary>
    public override string ToString() => Numerals.Plain((double)raw);
}
