namespace Lanewright.Quantities;

/// <summary>An electric current, root mean square, held in amperes. Legal: any finite value. The default is no current.</summary>
public readonly record struct Amperes : IComparable<Amperes>
{
    private readonly double raw;

    private Amperes(double raw) => this.raw = Require.Finite(raw);

    /// <summary>The current in amperes.</summary>
    public double Value => raw;

    /// <summary>A current from amperes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Amperes From(double amperes) => new(amperes);

    /// <summary>A multiple.</summary>
    public static Amperes operator *(Amperes left, double times) => new(left.raw * times);

    /// <summary>Whether the left one is smaller.</summary>
    public static bool operator <(Amperes left, Amperes right) => left.raw < right.raw;

    /// <summary>Whether the left one is larger.</summary>
    public static bool operator >(Amperes left, Amperes right) => left.raw > right.raw;

    /// <summary>Whether the left one is smaller or equal.</summary>
    public static bool operator <=(Amperes left, Amperes right) => left.raw <= right.raw;

    /// <summary>Whether the left one is larger or equal.</summary>
    public static bool operator >=(Amperes left, Amperes right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Amperes other) => raw.CompareTo(other.raw);

    /// <summary>The current with its unit.</summary>
    public override string ToString() => Numerals.Shown(raw, "A");
}
