using Lanewright.Findings;

namespace Lanewright.Rules.Plant;

/// <summary>Links patched at a panel in another hall than their device.</summary>
internal sealed class PatchCordLeavesHall() : Rule("LW4211", nameof(PatchCordLeavesHall), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        foreach (var (choice, solution) in judgement.Judged)
        {
            if (solution.Through is not { } way) continue;
            var links = judgement.Plan.Links;
            var (from, to) = (links.FromDevice(choice.Class.FirstLink), links.ToDevice(choice.Class.FirstLink));
            var bridges = way.Legs.Skip(1).Select((leg, i) => (Device: way.Legs[i].FarPanel, Panel: leg.NearPanel));
            var ends = new[] { (Device: from, Panel: way.NearPanel), (Device: to, Panel: way.FarPanel) }.Concat(bridges);
            var far = ends.Where(e => devices.Rack(e.Device)?.Hall != devices.Rack(e.Panel)?.Hall).ToList();
            if (far.Count == 0) continue;
            judgement.Add(this, choice,
                $"the cord from {devices.Name(far[0].Device)} to panel {devices.Name(far[0].Panel)} leaves its hall; "
                + "patch through trunks that end in the hall of the device");
        }
    }
}
