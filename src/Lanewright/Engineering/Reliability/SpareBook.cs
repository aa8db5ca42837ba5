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
    /// <summary>The parts of a list that can fail, those without a stated rate as well; none when no level is asked for.</summary>
    public static IEnumerable<SpareNeed> Of(Plan plan, ImmutableArray<PartLine> parts) =>
        from part in plan.Policy.SpareLevel is null ? [] : parts
        where part.Needed > 0 && PartOf(plan, part.Item) is not null
        let share = SpareParts.For(part.Item, part.Length, part.Needed - part.Existing, plan.Policy.Spares)
        select new SpareNeed(part.Item, part.Length, part.Needed, share, Of(plan, part.Item, part.Needed));

    /// <summary>The spares of one part by the level; null when it has no rate or nothing is asked.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="item">The part.</param>
    /// <param name="inUse">How many of it are in use, those that stand there already included.</param>
    public static SpareLevelNeed? Of(Plan plan, ICatalogueItem item, long inUse)
    {
        if (plan.Policy.SpareLevel is not { } level || inUse == 0 || PartOf(plan, item) is not { } kind) return null;
        if (plan.Policy.RateOf(kind, item.Name) is not { } rate) return null;
        var each = FailureIntensity.FromPerYear(rate.PerYear);
        var expected = each.Expected(inUse, level.Resupply);
        return new SpareLevelNeed(each, expected,
            Sparing.Least(expected, level.Confidence, SpareCount.OneOnShelf),
            Sparing.Least(expected, level.Confidence, SpareCount.NeverShort), level.Count, rate.Source);
    }

    /// <summary>What it fails as; null for small parts that do not.</summary>
    public static FailingPart? PartOf(Plan plan, ICatalogueItem item) => item switch
    {
        DeviceModel { Kind: DeviceKind.Switch or DeviceKind.Chassis } => FailingPart.Switch,
        DeviceModel { Kind: DeviceKind.Panel } => FailingPart.Panel,
        DeviceModel => FailingPart.Host,
        CardModel => FailingPart.Card,
        ModuleModel => FailingPart.Module,
        CableItem => plan.Trunks.Any(t => ReferenceEquals(t.Cable, item)) ? FailingPart.Trunk : FailingPart.Cable,
        SundryModel => plan.Trunks.Any(t => ReferenceEquals(t.Cassette, item)) ? FailingPart.Cassette : null,
        _ => null,
    };
}
