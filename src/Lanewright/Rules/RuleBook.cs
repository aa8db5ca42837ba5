using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Binding;
using Lanewright.Notation;
using Lanewright.Standards;

namespace Lanewright.Rules;

/// <summary>All rules, and all kinds of findings.</summary>
public static class RuleBook
{
    /// <summary>The rules in the order of their codes.</summary>
    public static ImmutableArray<Rule> All { get; } =
    [
        new Cabling.LengthUnknown(),
        new Cabling.RouteMissing(),
        new Links.ModuleDoesNotFit(),
        new Links.AdapterUnknown(),
        new Links.ModulePowerExceeded(),
        new Links.HighPowerNotEnabled(),
        new Power.BoxPowerExceeded(),
        new Links.PortModeNotListed(),
        new Links.HostInterfaceMissing(),
        new Links.LanesShareFibre(),
        new Links.AdapterInUse(),
        new Links.GearboxMissing(),
        new Links.FecInModuleContradicts(),
        new Links.PowerClassExceeded(),
        new Power.BoxPowerUnknown(),
        new Links.FibreKindDiffers(),
        new Links.MediaLanesDiffer(),
        new Links.LaneBaudDiffers(),
        new Links.LaneModulationDiffers(),
        new Links.WavelengthPlanDiffers(),
        new Links.WireFecDiffers(),
        new Links.WireFecByAgreement(),
        new Links.HostFecWrong(),
        new Links.DraftNotAllowed(),
        new Links.DraftInUse(),
        new Links.ConnectorDiffers(),
        new Links.PolishDiffers(),
        new Links.FanOutNotMade(),
        new Links.PinsClash(),
        new Links.LossBudgetExceeded(),
        new Links.PowerBudgetExceeded(),
        new Links.ReachExceeded(),
        new Links.EngineeredReachUsed(),
        new Links.LinkTooShort(),
        new Links.DispersionTooPositive(),
        new Links.DispersionTooNegative(),
        new Links.GroupDelayExceeded(),
        new Links.ReceiverOverloaded(),
        new Links.ReceiverDamaged(),
        new Links.ReflectanceTooHigh(),
        new Links.ReturnLossTooLow(),
        new Links.InterferenceLikely(),
        new Links.LossMarginThin(),
        new Links.LossExceedanceLikely(),
        new Links.AttenuatorAdded(),
        new Links.CopperLossExceeded(),
        new Links.CopperPracticeExceeded(),
        new Links.AutonegotiationMismatch(),
        new Links.TrainingMissing(),
        new Links.CodeForcedUnderNegotiation(),
        new Links.BendSpaceShort(),
        new Links.ThickCopperBend(),
        new Links.CableShorterThanWay(),
        new Links.LatencyExceeded(),
        new Links.MediumForbidden(),
        new Links.NoCandidatePasses(),
        new Links.LimitUnknown(),
        new Links.NothingJoinsPorts(),
        new Links.WeakValuesUsed(),
        new Cost.StockUnused(),
        new Cost.PricesInvented(),
        new Cost.PriceMissing(),
        new Fabric.UplinksUneven(),
        new Fabric.ParallelLinkBreaks(),
        new Fabric.PairOnOneDevice(),
        new Fabric.UplinkRatesMixed(),
        new Fabric.LanesStranded(),
        new Fabric.LinkOverloaded(),
        new Fabric.DemandWithoutPath(),
        new Fabric.OverloadedAfterFailure(),
        new Fabric.HostsCutByOneFailure(),
        new Fabric.PairInOneModule(),
        new Fabric.PairInOneRack(),
        new Fabric.PairOnOneFeed(),
        new Fabric.WishesUnmet(),
        new Fabric.TierOversubscribed(),
        new Fabric.PairInOneTray(),
        new Fabric.HostsCutByOneTray(),
        new Pathways.PathwayOverfull(),
        new Pathways.PathwayBeyondPlan(),
        new Pathways.PathwaysApart(),
        new Pathways.RackFarFromPathway(),
        new Space.RackOverweight(),
        new Space.FloorOverloaded(),
        new Space.DeviceTooDeep(),
        new Space.RackPowerExceeded(),
        new Space.LabelsOffPage(),
        new Space.PlacesNamedAlike(),
        new Space.HeavyMountedHigh(),
        new Power.BreakerOverloaded(),
        new Power.FeedLossOverloads(),
        new Power.RackUnfed(),
        new Power.RackOnOneFeed(),
        new Power.CoolingShort(),
        new Power.InletTooWarm(),
        new Power.InletBeyondRecommended(),
        new Power.AltitudeBeyondClass(),
        new Power.AirStreamsMixed(),
        new Power.PhasesUnbalanced(),
        new Power.SparesUnreckoned(),
        new Power.HostsOnOneFeed(),
    ];

    /// <summary>Every kind of finding the program can make: those of reading and binding, and those of the rules.</summary>
    public static ImmutableArray<FindingKind> Kinds { get; } =
        [.. NotationFindings.All
            .Concat(StandardsFindings.All)
            .Concat(ModelFindings.All)
            .Concat(PortFindings.All)
            .Concat(All.Select(r => r.Kind))
            .OrderBy(k => k.Code, StringComparer.Ordinal)];
}
