using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>Words that findings about networks share.</summary>
internal static class FabricWords
{
    /// <summary>A thing by name and how many more are like it.</summary>
    public static string WithMore(string name, long count) => count > 1 ? $"{name} and {Numerals.Whole(count - 1)} more" : name;

    /// <summary>A number of things.</summary>
    public static string Count(long count, string what) => $"{Numerals.Whole(count)} {what}{(count == 1 ? "" : "s")}";

    /// <summary>A share as people write it.</summary>
    public static string Percent(Share share) => Numerals.Shown(share.Percent, "%");

    /// <summary>A utilisation is over its limit only beyond this: the last places are rounding.</summary>
    public const double Rounding = 1e-9;

    /// <summary>A link by its ends, in the direction that is full.</summary>
    public static string LinkName(FabricMap map, BusyLink link) => $"{map.Name(link.From)} to {map.Name(link.To)}";

    /// <summary>A link by its ends.</summary>
    public static string LinkName(FabricMap map, int link, bool isFromA = true)
    {
        if (link < 0) return "no link";
        var ends = map.Graph.Links[link];
        return isFromA ? $"{map.Name(ends.A)} to {map.Name(ends.B)}" : $"{map.Name(ends.B)} to {map.Name(ends.A)}";
    }

    /// <summary>Whether a demand that runs at the same time has been reported already as filling a link as far.</summary>
    public static bool IsSaid(DemandStudy study, Dictionary<string, Share> said, Share full) =>
        study.Demand.With.Any(w => said.TryGetValue(w, out var before) && full.Value <= before.Value * (1 + Rounding));

    /// <summary>What fails, in words.</summary>
    public static string Failure(FailureUnit unit) => unit.Kind switch
    {
        FailureKind.Link => $"the link {unit.Name}",
        FailureKind.Module => $"the module in {unit.Name}",
        FailureKind.Cable => $"the cable {unit.Name}",
        FailureKind.Rack => $"rack {unit.Name}",
        FailureKind.Feed => $"feed {unit.Name}",
        FailureKind.Tray => $"tray {unit.Name}",
        FailureKind.Trunk => $"trunk {unit.Name}",
        FailureKind.Panel => $"panel {unit.Name}",
        FailureKind.Route => $"the way from {unit.Name}",
        FailureKind.Span => $"span {unit.Name}",
        FailureKind.Duct => $"duct {unit.Name}",
        _ => unit.Name,
    };
}
