using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Racks with devices and no pathway near them.</summary>
internal sealed class RackFarFromPathway() : Rule("LW4104", nameof(RackFarFromPathway), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var racks = judgement.Racks.Value.Racks.Select(r => r.Rack.Index).ToHashSet();
        foreach (var hall in judgement.Pathways.Value.Halls)
        {
            var far = hall.Racks.Where(r => racks.Contains(r.Index) && hall.OffPathway(r) > (r.Type.Depth + r.Type.Width).Metres).ToList();
            if (far.Count == 0) continue;
            var worst = far.MaxBy(hall.OffPathway) ?? far[0];
            judgement.Add(this, hall.Graph.Segments[0].Pathway.Span,
                $"rack {worst.Name} is {Numerals.Shown(hall.OffPathway(worst), "m")} away from the nearest pathway, and its cables "
                + "have nothing to lie on; lead a tray over its row",
                hall.Hall.Name, far.Count);
        }
    }
}
