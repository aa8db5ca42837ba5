using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Demands;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The share of time each thing that may fail is up, by the rate of its model or else of its kind; what has no rate never
/// fails.</summary>
/// <param name="policy">The rates.</param>
/// <param name="units">The things.</param>
internal sealed class UnitAvailability(Policy policy, ImmutableArray<FailureUnit> units)
{
    private readonly Dictionary<(FailureKind Kind, string Model), Share> known = [];

    /// <summary>That of a thing by its number.</summary>
    public Share Of(int unit)
    {
        var key = (units[unit].Kind, units[unit].Model);
        return known.TryGetValue(key, out var share) ? share : known[key] = Of(key.Kind, key.Model);
    }

    private Share Of(FailureKind kind, string model) =>
        RateOf(policy, kind, model) is { } rate
            ? Availability.OfUnit(rate.PerYear, TimeSpan.FromHours(rate.Repair.Hours))
            : Share.From(1);

    /// <summary>The rate a policy states for a thing; null for none, and for fibre between sites, which has rates of its own.</summary>
    public static FailureRate? RateOf(Policy policy, FailureKind kind, string model) =>
        PlanFailures.PartOf(kind) is { } part ? policy.RateOf(part, model) : null;
}
