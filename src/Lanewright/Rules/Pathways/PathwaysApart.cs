using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;

namespace Lanewright.Rules.Pathways;

/// <summary>Racks whose pathways do not meet, in one hall or on the way to another.</summary>
internal sealed class PathwaysApart() : Rule("LW4103", nameof(PathwaysApart))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Pathways.Value.Net is not { } net) return;
        var ways = judgement.Design.Lengths.Ways;
        foreach (var hall in judgement.Racks.Value.Racks.GroupBy(r => r.Rack.Hall, r => r.Rack))
        {
            if (judgement.Plan.Building.Pathways.FirstOrDefault(p => p.Hall == hall.Key && p.Route is null) is not { } tray) continue;
            var used = hall.ToList();
            if (used.Skip(1).Where(r => IsApart(used[0], r)).ToList() is not { Count: > 0 } apart) continue;
            judgement.Add(this, tray.Span,
                $"no pathway leads from rack {used[0].Name} to rack {apart[0].Name}: the trays near them do not meet; let them cross or "
                + "touch, or add one between. Lengths between the two are reckoned straight along and across the rows meanwhile",
                hall.Key.Name, apart.Count);
        }

        foreach (var halls in AcrossHalls(judgement, net).GroupBy(p => (p.One.Hall, p.Other.Hall)))
        {
            var (one, other) = halls.First();
            // The hall that is not left is the one to be mended; where both are, they are left by exits of different routes.
            var hall = net.LeadsOut(one, other.Hall) ? other.Hall : one.Hall;
            var tray = judgement.Plan.Building.Pathways.FirstOrDefault(p => p.Hall == hall) ?? judgement.Plan.Building.Pathways[0];
            judgement.Add(this, tray.Span,
                $"no way leads along pathways from rack {one.Name} to rack {other.Name}: {Why(net, one, other, hall)}; "
                + "let them cross or touch, or add one between. Lengths are reckoned straight along and across the rows meanwhile, and "
                + "what runs between the two lies in no pathway",
                hall.PlainName, halls.Count());
        }

        bool IsApart(Rack one, Rack other) => ways?.Between(WayQuestion.Between(one.Index, other.Index, 0)) is null;
    }

    private static string Why(WayNet net, Rack one, Rack other, Hall hall) => net.LeadsOut(one, other.Hall) && net.LeadsOut(other, one.Hall)
        ? net.Building.RouteBetween(one.Hall, other.Hall) is null
            ? "in a hall on the way the pathways at the exit of one route do not meet those at the exit of the next"
            : "the pathways of the two halls lead to exits of different routes"
        : $"in {hall.PlainName} the pathways over the racks do not meet those at the exit";

    /// <summary>What is laid between halls that a route joins and finds no way.</summary>
    private static IEnumerable<(Rack One, Rack Other)> AcrossHalls(Judgement judgement, WayNet net)
    {
        var book = judgement.Pathways.Value;
        for (var i = 0; i < book.Pieces.Length; i++)
        {
            var question = book.Pieces[i].Question;
            var (one, other) = (net.Building.Racks[question.From], net.Building.Racks[question.To]);
            if (one.Hall == other.Hall || book.WayOf(i) is not null || !net.Building.AreJoined(one.Hall, other.Hall)) continue;
            // Where a way leads there in pathways of any side, it is the side that is missing.
            if (judgement.Design.Lengths.Ways?.Between(question with { Side = 0 }) is null) yield return (one, other);
        }
    }
}
