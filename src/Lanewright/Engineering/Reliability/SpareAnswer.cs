using Lanewright.Engineering.Load;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Reliability;

/// <summary>How often units alike fail, and the spares that last until more arrive.</summary>
/// <param name="Each">How often one fails.</param>
/// <param name="Units">Units in use, 1 or more.</param>
/// <param name="Resupply">From ordering a spare to having it.</param>
/// <param name="Level">The probability wanted, below 1.</param>
public sealed record SpareAnswer(FailureIntensity Each, int Units, Duration Resupply, Share Level)
{
    /// <summary>Failures to expect of all in a year of 365 days.</summary>
    public double PerYear => Each.Expected(Units, Duration.Year);

    /// <summary>Failures to expect until more spares arrive.</summary>
    public double Expected => Each.Expected(Units, Resupply);

    /// <summary>The fewest spares by a convention.</summary>
    public long Spares(SpareCount count) => Sparing.Least(Expected, Level, count);

    /// <summary>What so many spares reach by a convention.</summary>
    public Share Reached(long spares, SpareCount count) =>
        Sparing.NoMoreThan(Expected, count == SpareCount.OneOnShelf ? spares - 1 : spares);

    /// <summary>Units that have to work; null where nobody asks how often they do.</summary>
    public int? Needed { get; init; }

    /// <summary>From failure to working again.</summary>
    public Duration Repair { get; init; }

    /// <summary>The share of time one unit works.</summary>
    public Share Up => Availability.OfUnit(Each.PerYear, TimeSpan.FromHours(Repair.Hours));

    /// <summary>The share of time that enough units work; null where nobody asks.</summary>
    public Share? EnoughUp => Needed is { } needed ? Availability.AtLeast(Units, needed, Up) : null;
}
