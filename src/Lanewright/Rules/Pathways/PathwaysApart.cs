namespace Lanewright.Rules.Pathways;

/// <summary>Racks whose pathways do not meet.</summary>
internal sealed class PathwaysApart() : Rule("LW4103", nameof(PathwaysApart))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var racks = judgement.Racks.Value.Racks.Select(r => r.Rack.Index).ToHashSet();
        foreach (var hall in judgement.Pathways.Value.Halls)
        {
            var used = hall.Racks.Where(r => racks.Contains(r.Index)).ToList();
            var apart = used.Skip(1).Where(r => hall.Metres(used[0].Index, r.Index) is null).ToList();
            if (apart.Count == 0) continue;
            judgement.Add(this, hall.Graph.Segments[0].Pathway.Span,
                $"no pathway leads from rack {used[0].Name} to rack {apart[0].Name}: the trays near them do not meet; let them cross or "
                + "touch, or add one between. Lengths between the two are reckoned straight along and across the rows meanwhile",
                hall.Hall.Name, apart.Count);
        }
    }
}
