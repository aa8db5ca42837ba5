using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Lanes of cages that no port in use reaches.</summary>
internal sealed class LanesStranded() : Rule("LW3105", nameof(LanesStranded), Severity.Advice)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        foreach (var stranded in StrandedLanes.Of(judgement.Plan, judgement.Design))
        {
            var group = stranded.Group;
            if (stranded.Cages > 0)
                judgement.Add(this, group.Span,
                    $"{FabricWords.Count(stranded.Cages, "cage")} of '{group.Name}' {(stranded.Cages == 1 ? "leaves" : "leave")} "
                    + $"{stranded.IdleLanes} of {stranded.AllLanes} lanes idle, {devices.Name(stranded.Device)} port "
                    + $"{group.Layout.Slots[stranded.Cage].Label} for one; a mode with more ports, or a faster link, would use them",
                    group.Name, stranded.Cages);
            if (stranded.DarkCages > 0)
                judgement.Add(this, group.Span,
                    $"{FabricWords.Count(stranded.DarkCages, "cage")} of {devices.Name(stranded.DarkDevice)} "
                    + $"{(stranded.DarkCages == 1 ? "stays" : "stay")} dark: all {stranded.Ports} ports that {group.Model.Name} can have "
                    + "are in use; split fewer cages into fewer, faster ports",
                    group.Name, stranded.DarkCages);
        }
    }
}
