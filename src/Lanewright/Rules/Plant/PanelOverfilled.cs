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
            if (ends <= group.Model.Slots) continue;
            judgement.Add(this, group.Span,
                $"{ends} trunks end in panel {devices.Name(panel)}, which has {group.Model.Slots} places; take a larger panel, or one more",
                devices.Name(panel), ends - group.Model.Slots);
        }
    }
}
