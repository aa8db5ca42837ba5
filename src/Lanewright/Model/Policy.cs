using System.Collections.Immutable;
using Lanewright.Model.Demands;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Model;

/// <summary>What holds for the whole project unless a link says otherwise.</summary>
public sealed record Policy
{
    /// <summary>Loss of a mated pair.</summary>
    public required Known<Decibels> ConnectionLoss { get; init; }

    /// <summary>Grade of connectors, for the chance that a link exceeds its limit; empty when not stated.</summary>
    public string ConnectionGrade { get; init; } = "";

    /// <summary>Loss of a splice.</summary>
    public required Known<Decibels> SpliceLoss { get; init; }

    /// <summary>Reflectance of every connection; null when the polish decides.</summary>
    public Known<Decibels>? Reflectance { get; init; }

    /// <summary>Loss kept back for ageing and repair on every fibre link.</summary>
    public required Decibels AgeingMargin { get; init; }

    /// <summary>A fibre link with less margin than this is warned of.</summary>
    public required Decibels LeastMargin { get; init; }

    /// <summary>Mated pairs in a channel inside a hall.</summary>
    public int ConnectionsInHall { get; init; }

    /// <summary>Mated pairs on each route between halls that states none.</summary>
    public int ConnectionsBetweenHalls { get; init; } = 2;

    /// <summary>Extra length on the way for detours.</summary>
    public required Share Contingency { get; init; }

    /// <summary>Extra length at each end to work with.</summary>
    public required Length Service { get; init; }

    /// <summary>From the port to the side of the rack, at each end.</summary>
    public required Length InRack { get; init; }

    /// <summary>Media to choose from first, best first.</summary>
    public ImmutableArray<string> PreferredMedia { get; init; } = [];

    /// <summary>Media never to choose.</summary>
    public ImmutableArray<string> ForbiddenMedia { get; init; } = [];

    /// <summary>Form factors of modules to choose from first.</summary>
    public ImmutableArray<string> PreferredFormFactors { get; init; } = [];

    /// <summary>How long passive copper may be, by rate.</summary>
    public ImmutableArray<CopperLimit> CopperLimits { get; init; } = [];

    /// <summary>How well single-mode fibre bears bends, such as G.657.A1; empty when not stated, and then bends cost nothing.</summary>
    public string BendCategory { get; init; } = "";

    /// <summary>Spare parts to buy on top of what is used.</summary>
    public required Share Spares { get; init; }

    /// <summary>How sure spares are to last until more arrive; null when not stated.</summary>
    public SpareLevel? SpareLevel { get; init; }

    /// <summary>Whether Lanewright may choose types whose standard is a draft.</summary>
    public bool AllowsDrafts { get; init; }

    /// <summary>How switches split traffic over several ways.</summary>
    public TrafficSplit Split { get; init; }

    /// <summary>A link that a demand fills beyond this is overloaded.</summary>
    public Share MostUtilisation { get; init; } = Share.From(1);

    /// <summary>The most a tier may carry from below against what it has upward, from the hosts up; the last holds for all tiers above it;
    /// empty when not stated.</summary>
    public ImmutableArray<Ratio> Oversubscription { get; init; } = [];

    /// <summary>Cuts of fibre between sites in a year on 1000 km.</summary>
    public required Known<double> FibreCuts { get; init; }

    /// <summary>Share of time in which a site works that says nothing of its own; null where nothing is said.</summary>
    public Share? SiteAvailability { get; init; }

    /// <summary>From a cut of such fibre until it works again.</summary>
    public required Known<Duration> FibreRepair { get; init; }

    /// <summary>How often things fail; empty when not stated, and then no availability is reckoned.</summary>
    public ImmutableArray<FailureRate> FailureRates { get; init; } = [];

    /// <summary>How often a model of something fails: by its own rate, or by that of the kind; null when neither is stated.</summary>
    /// <param name="part">What it fails as.</param>
    /// <param name="model">Its name in the catalogue; empty for what has none.</param>
    public FailureRate? RateOf(FailingPart part, string model) =>
        FailureRates.LastOrDefault(r => r.Part == part && (r.Model.Length == 0 || r.Model == model));

    /// <summary>Share of a breaker's rating that continuous load may take.</summary>
    public required Known<double> BreakerShare { get; init; }

    /// <summary>Power factor of the equipment, above 0 and up to 1.</summary>
    public required Known<double> PowerFactor { get; init; }

    /// <summary>Energy of the site over that of the equipment, not below 1; null when not stated.</summary>
    public double? Pue { get; init; }
}
