using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Words about a way that all its drawings share.</summary>
internal static class WayWords
{
    /// <summary>Rate, medium, length and an example.</summary>
    public static string Subtitle(Plan plan, LinkWay way) => Subtitle(way, Example(plan, way));

    /// <summary>The same for a drawing that calls its ends A and B, and has the second end of the link first when turned.</summary>
    public static string Subtitle(Plan plan, LinkWay way, bool isTurned, string far)
    {
        var (from, to) = Ends(plan, way);
        return Subtitle(way, isTurned ? $"{to} (A) to {from} ({far})" : $"{from} (A) to {to} ({far})");
    }

    private static string Subtitle(LinkWay way, string example) =>
        $"{way.Class.Statement.Rate} a link over {way.Solution.MediumName}, {way.Solution.Length}. For example {example}.";

    /// <summary>The type, and how often one cable carries it.</summary>
    public static string Title(LinkWay way)
    {
        var type = way.Solution.Medium switch
        {
            CableMedium.Aec => "active copper, " + way.Solution.TypeName,
            CableMedium.Aoc => "active optical cable, " + way.Solution.TypeName,
            _ => way.Solution.TypeName,
        };
        var (split, runs) = way.Class.Shape == FanShape.ToEnd
            ? (way.Class.To, way.Solution.ToApplication)
            : (way.Class.From, way.Solution.FromApplication);
        // A module that runs once what is asked of several ports is one, however the cage is split.
        if (way.Class.Shape != FanShape.Single && runs?.Instances < way.Used)
            return $"{type} asked of a cage split {Numerals.Whole(split.Ways)} ways";
        return way.Class.Shape switch
        {
            FanShape.Single => type,
            FanShape.Straight => $"{Numerals.Whole(way.Used)} x {type} between two split cages",
            FanShape.FromEnd or FanShape.ToEnd => $"{Numerals.Whole(way.Used)} x {type} from one split cage",
            _ => $"{type}, both cages split and mixed",
        };
    }

    /// <summary>The first link of the way by its ends.</summary>
    public static string Example(Plan plan, LinkWay way)
    {
        var (from, to) = Ends(plan, way);
        return $"{from} to {to}";
    }

    private static (string From, string To) Ends(Plan plan, LinkWay way)
    {
        var (link, labels) = (way.Members[0].FirstLink, new PlaceLabels(plan));
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        var fromName = $"{plan.Devices.Name(from)} port {labels.Port(from, plan.Links.FromPort(link))}";
        var toName = $"{plan.Devices.Name(to)} port {labels.Port(to, plan.Links.ToPort(link))}";
        return (fromName, toName);
    }
}
