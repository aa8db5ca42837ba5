namespace Lanewright.Quantities;

/// <summary>An amount in the plan's neutral currency unit. Stored as a whole number of hundredths, so that sums are exact,
/// wide enough for the dearest part a million times. Legal: any amount, credits included. The default is nothing.</summary>
public readonly record struct Money : IComparable<Money>
{
    private readonly Int128 hundredths;

    private Money(Int128 hundredths) => this.hundredths = hundredths;

    /// <summary>Nothing.</summary>
    public static Money Zero => default;

    /// <summary>The amount in hundredths of a unit.</summary>
    public decimal Hundredths => (decimal)hundredths;

    /// <summary>The amount in whole units, for show and for ratios.</summary>
    public decimal Units => (decimal)hundredths / 100m;

    /// <summary>Makes an amount from hundredths.</summary>
    public static Money FromHundredths(decimal hundredths) => new((Int128)Math.Round(hundredths));

    /// <summary>Makes an amount from units, rounded to the nearest hundredth.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static Money FromUnits(double units) => new(checked((Int128)Math.Round(Require.Finite(units) * 100)));

    /// <summary>The sum.</summary>
    public static Money operator +(Money left, Money right) => new(checked(left.hundredths + right.hundredths));

    /// <summary>The difference.</summary>
    public static Money operator -(Money left, Money right) => new(checked(left.hundredths - right.hundredths));

    /// <summary>The amount taken a number of times.</summary>
    public static Money operator *(Money amount, long times) => new(checked(amount.hundredths * times));

    /// <summary>Whether the left amount is smaller.</summary>
    public static bool operator <(Money left, Money right) => left.hundredths < right.hundredths;

    /// <summary>Whether the left amount is larger.</summary>
    public static bool operator >(Money left, Money right) => left.hundredths > right.hundredths;

    /// <summary>Whether the left amount is smaller or equal.</summary>
    public static bool operator <=(Money left, Money right) => left.hundredths <= right.hundredths;

    /// <summary>Whether the left amount is larger or equal.</summary>
    public static bool operator >=(Money left, Money right) => left.hundredths >= right.hundredths;

    /// <inheritdoc/>
    public int CompareTo(Money other) => hundredths.CompareTo(other.hundredths);

    /// <summary>The amount with two decimals.</summary>
    public override string ToString() => Numerals.Fixed(Units, 2);
}
