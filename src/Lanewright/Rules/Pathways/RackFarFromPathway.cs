using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Racks with devices and no pathway near them.</summary>
internal sealed class RackFarFromPathway() : Rule("LW4104", nameof(RackFarFromPathway), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Pathways.Value.Net is not { } net) return;
        foreach (var hall in judgement.Racks.Value.Racks.GroupBy(r => r.Rack.Hall, r => r.Rack))
        {
            if (judgement.Plan.Building.Pathways.FirstOrDefault(p => p.Hall == hall.Key && p.Route is null) is not { } tray) continue;
            var far = hall.Where(r => Rounding.IsAbove(Off(r), (r.Type.Depth + r.Type.Width).Metres)).ToList();
            if (far.Count == 0) continue;
            var worst = far.MaxBy(Off) ?? far[0];
            judgement.Add(this, tray.Span,
                $"rack {worst.Name} is {Numerals.Shown(Off(worst), "m")} away from the nearest pathway, and its cables "
                + "have nothing to lie on; lead a tray over its row",
                hall.Key.Name, far.Count);
        }

        double Off(Rack rack) => net.OffPathway(rack) ?? 0;
    }
}
