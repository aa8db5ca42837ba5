using Lanewright.Engineering.Plant;

namespace Lanewright.Rules.Plant;

/// <summary>A panel that more trunks end in than it has places.</summary>
internal sealed class PanelOverfilled() : Rule("LW4206", nameof(PanelOverfilled))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        foreach (var (panel, ends) in PlantBook.EndsByPanel(judgement.Plan))
        {
            var group = devices.Group(panel);
            // Fibre of lines between sites is spliced into places of its own: one for each line that ends there, at the least.
            var lines = judgement.Plan.Lines.Sum(l => l.FromPanels.Count(p => p == panel) + l.ToPanels.Count(p => p == panel));
            var over = ends + lines - group.Model.Slots;
            if (over <= 0) continue;
            var others = lines == 0 ? "" : $" and {lines} {(lines == 1 ? "line" : "lines")}";
            judgement.Add(this, group.Span,
                $"{ends} trunks{others} end in panel {devices.Name(panel)}, which has {group.Model.Slots} places; take a larger panel, or "
                + "one more",
                devices.Name(panel), over);
        }
    }
}
