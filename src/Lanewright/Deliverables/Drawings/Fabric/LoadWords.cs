using Lanewright.Engineering.Load;
using Lanewright.Model.Binding;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Words about loads that drawings, report and JSON share.</summary>
public static class LoadWords
{
    /// <summary>A link is over its limit only beyond this: the last places are rounding.</summary>
    public const double Rounding = 1e-9;

    /// <summary>A share as people read it.</summary>
    public static string Percent(Share share) => Numerals.Unit(Math.Round(share.Percent, share.Percent < 10 ? 1 : 0), "%");

    /// <summary>A kind of demand by the name plans give it.</summary>
    public static string Kind(DemandStudy study) => DemandLanguage.Kinds.First(k => k.Kind == study.Demand.Kind).Name;

    /// <summary>A split by the name plans give it.</summary>
    public static string Split(SplitRule rule) => rule switch
    {
        SplitRule.PathWeighted => "path-weighted",
        SplitRule.Ideal => "ideal",
        _ => "per-hop",
    };

    /// <summary>A kind of failure in one word.</summary>
    public static string Failure(FailureKind kind) => kind switch
    {
        FailureKind.Link => "link",
        FailureKind.Module => "module",
        FailureKind.Switch => "switch",
        FailureKind.Cable => "cable",
        FailureKind.Rack => "rack",
        FailureKind.Feed => "feed",
        FailureKind.Trunk => "trunk",
        FailureKind.Panel => "panel",
        FailureKind.Route => "route",
        FailureKind.Span => "span",
        FailureKind.Duct => "duct",
        _ => "tray",
    };

    /// <summary>What fails, with its kind.</summary>
    public static string Failure(FailureUnit unit) => $"{Failure(unit.Kind)} {unit.Name}";

    /// <summary>A number of switches.</summary>
    public static string Switches(long count) => Numerals.Grouped(count) + (count == 1 ? " switch" : " switches");

    /// <summary>How a bisection was found, in a word or two.</summary>
    public static string Proof(BisectionProof proof) => proof switch
    {
        BisectionProof.Enumerated => "enumerated",
        BisectionProof.BoundsMeet => "bounds meet",
        BisectionProof.Searched => "searched",
        _ => "bounds",
    };

    /// <summary>A link by its ends in the direction that is fuller.</summary>
    public static string Link(FabricMap map, BusyLink link) => $"{map.Name(link.From)} to {map.Name(link.To)}";

    /// <summary>What the demand is, in one sentence.</summary>
    public static string About(DemandStudy study)
    {
        var demand = study.Demand;
        var rate = demand.Rate is { } stated ? $"{stated} a host" : "line rate";
        var hosts = $"{Numerals.Grouped(demand.Senders.Length)} hosts";
        var with = demand.With.IsEmpty ? "" : $", together with {string.Join(", ", demand.With)}";
        return Kind(study) switch
        {
            "spread" => $"{hosts} spread {rate} over {Numerals.Grouped(demand.Receivers.Length)} hosts{with}.",
            "incast" => $"{hosts} send {rate} to {study.Fabric.Map.Plan.Devices.Name(demand.Receivers[0])}{with}.",
            "hose" => $"{hosts}, any traffic of at most {rate}; each link at the worst of it.",
            var kind => $"{hosts}, {kind}, {rate}{with}.",
        };
    }
}
