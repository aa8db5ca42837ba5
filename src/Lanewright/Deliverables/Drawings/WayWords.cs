using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Words about a way that all its drawings share.</summary>
internal static class WayWords
{
    /// <summary>Rate, medium, length and an example.</summary>
    public static string Subtitle(Plan plan, LinkWay way)
    {
        var solution = way.Solution;
        return $"{way.Class.Statement.Rate} a link over {solution.MediumName}, {solution.Length}. For example {Example(plan, way)}.";
    }

    /// <summary>The type, and how often one cable carries it.</summary>
    public static string Title(LinkWay way)
    {
        var type = way.Solution.Medium switch
        {
            CableMedium.Aec => "active copper, " + way.Solution.TypeName,
            CableMedium.Aoc => "active optical cable, " + way.Solution.TypeName,
            _ => way.Solution.TypeName,
        };
        return way.Class.Shape switch
        {
            FanShape.Single => type,
            FanShape.Straight => $"{Numerals.Whole(way.Class.From.Ways)} x {type} between two split cages",
            FanShape.FromEnd => $"{Numerals.Whole(way.Class.From.Ways)} x {type} from one split cage",
            FanShape.ToEnd => $"{Numerals.Whole(way.Class.To.Ways)} x {type} from one split cage",
            _ => $"{type}, both cages split and mixed",
        };
    }

    /// <summary>The first link of the way by its ends.</summary>
    public static string Example(Plan plan, LinkWay way)
    {
        var (link, labels) = (way.Members[0].FirstLink, new PlaceLabels(plan));
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        var fromName = $"{plan.Devices.Name(from)} port {labels.Port(from, plan.Links.FromPort(link))}";
        var toName = $"{plan.Devices.Name(to)} port {labels.Port(to, plan.Links.ToPort(link))}";
        return $"{fromName} to {toName}";
    }
}
