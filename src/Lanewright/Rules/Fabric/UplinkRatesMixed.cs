using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Demands;

namespace Lanewright.Rules.Fabric;

/// <summary>Links up at several rates, over which traffic is split equally.</summary>
internal sealed class UplinkRatesMixed() : Rule("LW3104", nameof(UplinkRatesMixed), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Policy.Split == TrafficSplit.Ideal) return;
        var devices = judgement.Plan.Devices;
        foreach (var network in judgement.Load.Networks)
        {
            foreach (var group in MixedRates.Of(network).GroupBy(m => devices.Group(m.Device)))
            {
                var first = group.First();
                string To(int link) => devices.Name(network.FarDevice(link, first.Device));
                judgement.Add(this, network.Statement(first.SlowestLink).Span,
                    $"{FabricWords.WithMore(devices.Name(first.Device), group.Count())}: links up run at {first.Slowest} "
                    + $"(to {To(first.SlowestLink)}) and at {first.Fastest} (to {To(first.FastestLink)}); an equal split gives "
                    + "both as much, so the slow ones are full first; use one rate, or a split with weights",
                    group.Key.Name, group.Count());
            }
        }
    }
}
