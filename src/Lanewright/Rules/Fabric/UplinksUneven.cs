using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Uplinks that are not spread equally over the tier above.</summary>
internal sealed class UplinksUneven() : Rule("LW3101", nameof(UplinksUneven), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        foreach (var network in judgement.Load.Networks)
        {
            foreach (var group in UnevenUplinks.Of(network).GroupBy(u => devices.Group(u.Device)))
            {
                var worst = group.OrderByDescending(u => u.Most - u.Fewest).ThenBy(u => u.Device).First();
                var few = worst.Fewest == 0 ? "none" : FabricWords.Count(worst.Fewest, "link");
                judgement.Add(this, network.Statement(network.UpLinks(worst.Device)[0]).Span,
                    $"{FabricWords.WithMore(devices.Name(worst.Device), group.Count())}: uplinks are spread unequally, "
                    + $"{FabricWords.Count(worst.Most, "link")} to {devices.Name(worst.MostTo)} "
                    + $"and {few} to {devices.Name(worst.FewestTo)}; "
                    + $"take a number of uplinks that {worst.Upper} divides, or as many switches above as divide the uplinks",
                    group.Key.Name, group.Count());
            }
        }
    }
}
