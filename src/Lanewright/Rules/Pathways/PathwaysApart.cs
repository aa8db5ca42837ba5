using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;

namespace Lanewright.Rules.Pathways;

/// <summary>Racks whose pathways do not meet.</summary>
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

        bool IsApart(Rack one, Rack other) => ways?.Between(WayQuestion.Between(one.Index, other.Index, 0)) is null;
    }
}
