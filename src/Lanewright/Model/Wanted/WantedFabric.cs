using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Wanted;

/// <summary>What a fabric has to do, and the limits it has to keep. What is not said does not bind.</summary>
public sealed record WantedFabric
{
    /// <summary>The hosts, in natural order of their names.</summary>
    public required ImmutableArray<HostDemand> Hosts { get; init; }

    /// <summary>Where it is asked for.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>By how much the hosts grow each year; not below zero.</summary>
    public Share Growth { get; init; }

    /// <summary>Years the fabric has to last. The hosts after so many years still fit under the upper tier bought at the start.</summary>
    public int Years { get; init; }

    /// <summary>The most a tier may carry from below against what it has upward, from the hosts up; the last holds for all tiers
    /// above it; empty for one to one.</summary>
    public ImmutableArray<Ratio> Oversubscription { get; init; } = [];

    /// <summary>Switches of the tier above that may be out while the ratio still holds.</summary>
    public int Survive { get; init; }

    /// <summary>Fabrics side by side; 1 or less when not asked for.</summary>
    public int Planes { get; init; }

    /// <summary>Accelerators of a server that each have a leaf of their own; 1 or less when not asked for.</summary>
    public int Rails { get; init; }

    /// <summary>Form factors that cages in use may have; empty for any.</summary>
    public ImmutableArray<string> FormFactors { get; init; } = [];

    /// <summary>Rates links between switches may run at; empty for any.</summary>
    public ImmutableArray<BitRate> UplinkRates { get; init; } = [];

    /// <summary>The most tiers of switches; null for as many as three.</summary>
    public int? MostTiers { get; init; }

    /// <summary>Shapes that are allowed; empty for all.</summary>
    public ImmutableArray<FabricShape> Shapes { get; init; } = [];

    /// <summary>Rack units all switches may take together, after the last year; null when not limited.</summary>
    public int? RackUnits { get; init; }

    /// <summary>The most that switches with their modules may draw in any one rack; null when not limited.</summary>
    public Watts? RackPower { get; init; }

    /// <summary>The most that switches may weigh in any one rack; null when not limited.</summary>
    public Mass? RackWeight { get; init; }

    /// <summary>The most that may be paid over the years, energy and later purchases included; null when not limited.</summary>
    public Money? Budget { get; init; }

    /// <summary>Price of a kilowatt-hour.</summary>
    public EnergyPrice EnergyPrice { get; init; }

    /// <summary>Energy for cooling and losses on top of each unit that the switches draw: power usage effectiveness less one.</summary>
    public Share Overhead { get; init; }

    /// <summary>Racks for hosts, in the order they fill; empty for a standard hall laid out by rule.</summary>
    public ImmutableArray<Rack> HostRacks { get; init; } = [];

    /// <summary>Racks for upper tiers; empty for a standard hall laid out by rule.</summary>
    public ImmutableArray<Rack> SpineRacks { get; init; } = [];

    /// <summary>What the plan says of the place; null without a plan.</summary>
    public WantedSite? Site { get; init; }

    /// <summary>Equipment that exists and stays.</summary>
    public ImmutableArray<Reused> Reuse { get; init; } = [];

    /// <summary>The ratio wanted of a tier.</summary>
    /// <param name="tier">The tier, from 0 at the hosts.</param>
    public Ratio OversubscriptionOf(int tier) =>
        Ratio.OfTier(Oversubscription, tier) ?? Ratio.One;

    /// <summary>Whether what stands in a rack belongs to what is asked about: anything, or what stands in the halls of the racks named for
    /// hosts.</summary>
    public bool Concerns(Rack? rack) => HostRacks.IsEmpty || (rack is not null && HostRacks.Any(r => r.Hall == rack.Hall));
}
