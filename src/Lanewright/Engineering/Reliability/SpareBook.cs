using System.Collections.Immutable;
using Lanewright.Engineering.Cost;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Demands;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Reliability;

/// <summary>Spares of each part for the level that a policy asks for.</summary>
public static class SpareBook
{
    /// <summary>The parts of a list that fail at a stated rate; none when no level is asked for.</summary>
    public static IEnumerable<SpareNeed> Of(Policy policy, ImmutableArray<PartLine> parts)
    {
        if (policy.SpareLevel is null) yield break;
        foreach (var part in parts)
            if (Of(policy, part.Item, part.Needed) is { } need) yield return need with { Length = part.Length };
    }

    /// <summary>The spares of one part; null when it has no rate or nothing is asked.</summary>
    /// <param name="policy">The policy.</param>
    /// <param name="item">The part.</param>
    /// <param name="inUse">How many of it are in use, those that stand there already included.</param>
    public static SpareNeed? Of(Policy policy, ICatalogueItem item, long inUse)
    {
        if (policy.SpareLevel is not { } level || inUse == 0 || PartOf(item) is not { } kind) return null;
        if (policy.FailureRates.FirstOrDefault(r => r.Part == kind) is not { } rate) return null;
        var each = FailureIntensity.FromPerYear(rate.PerYear);
        var expected = each.Expected(inUse, level.Resupply);
        return new SpareNeed(item, null, inUse, each, expected,
            Sparing.Least(expected, level.Confidence, SpareCount.OneOnShelf),
            Sparing.Least(expected, level.Confidence, SpareCount.NeverShort), level.Count);
    }

    /// <summary>What it fails as; null for what is not kept in reserve: hosts, chassis, their cards and small parts.</summary>
    public static FailingPart? PartOf(ICatalogueItem item) => item switch
    {
        DeviceModel { Kind: DeviceKind.Switch } => FailingPart.Switch,
        ModuleModel => FailingPart.Module,
        CableItem => FailingPart.Cable,
        _ => null,
    };
}
