namespace Lanewright.Quantities;

/// <summary>How often one thing fails, held as failures an hour. Legal: zero and above. The default never fails.</summary>
public readonly record struct FailureIntensity : IComparable<FailureIntensity>
{
    private const double HoursOfFit = 1e9;
    private readonly double raw;

    private FailureIntensity(double perHour)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(perHour);
        if (!double.IsFinite(perHour)) throw new ArgumentOutOfRangeException(nameof(perHour));
        raw = perHour;
    }

    /// <summary>Failures in a year of 365 days.</summary>
    public double PerYear => raw * Duration.Year.Hours;

    /// <summary>Failures in 10^9 hours.</summary>
    public double Fit => raw * HoursOfFit;

    /// <summary>From failures in a year of 365 days.</summary>
    public static FailureIntensity FromPerYear(double failures) => new(failures / Duration.Year.Hours);

    /// <summary>From failures in 10^9 hours.</summary>
    public static FailureIntensity FromFit(double failures) => new(failures / HoursOfFit);

    /// <summary>From the mean time between failures, above zero.</summary>
    public static FailureIntensity FromMeanTimeBetween(Duration between) => new(1 / between.Hours);

    /// <summary>Mean time between failures; nothing when it never fails.</summary>
    public Duration? MeanTimeBetween => raw > 0 ? Duration.FromHours(1 / raw) : null;

    /// <summary>Failures to expect of so many in a time.</summary>
    public double Expected(long units, Duration time) => units * raw * time.Hours;

    /// <summary>Things that all have to work: their failures add.</summary>
    public static FailureIntensity operator +(FailureIntensity left, FailureIntensity right) => new(left.raw + right.raw);

    /// <inheritdoc/>
    public int CompareTo(FailureIntensity other) => raw.CompareTo(other.raw);

    /// <summary>Less often.</summary>
    public static bool operator <(FailureIntensity left, FailureIntensity right) => left.raw < right.raw;

    /// <summary>More often.</summary>
    public static bool operator >(FailureIntensity left, FailureIntensity right) => left.raw > right.raw;

    /// <summary>No more often.</summary>
    public static bool operator <=(FailureIntensity left, FailureIntensity right) => left.raw <= right.raw;

    /// <summary>No less often.</summary>
    public static bool operator >=(FailureIntensity left, FailureIntensity right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public override string ToString() => Numerals.Unit(Fit, "FIT");
}
