using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Sentences about networks and demands that the command line and the report share.</summary>
public static class LoadSentences
{
    /// <summary>A tier as it is built, against what is wanted of it.</summary>
    public static string Oversubscription(NetworkStudy fabric, TierOversubscription tier) =>
        $"tier {tier.Tier}: {LoadWords.Switches(tier.Switches)}, {fabric.Map.Plan.Devices.Name(tier.Device)} takes {tier.Below} from below "
        + $"and passes {tier.Above} on, {Numerals.Plain(Math.Round(tier.Ratio, 2))}:1"
        + (fabric.WantedOf(tier) is { } wanted ? $" where {wanted} is wanted" : "");

    /// <summary>How long the quickest and the slowest way take, and what of it is spent where; null where it is not known.</summary>
    public static string? Latency(NetworkStudy fabric) => fabric.Latency is not { } latency ? null
        : $"latency without queues {Of(latency.Shortest)} to {Of(latency.Longest)}, "
            + $"{fabric.Map.Name(latency.LongestFrom)} to {fabric.Map.Name(latency.LongestTo)} [{Marks.Name(latency.Mark)}]";

    /// <summary>What a hash makes of few large flows; null where the demand states none.</summary>
    public static string? Collisions(DemandStudy study) => study.Collisions is not { } met ? null
        : $"{met.Flows} large flows over {met.Uplinks} uplinks of {study.Fabric.Map.Plan.Devices.Name(met.Device)}: "
            + $"none meet with a chance of {LoadWords.Percent(met.Hash.NoCollision)}, the busiest uplink has "
            + $"{Numerals.Plain(Math.Round(met.Hash.BusiestFlows, 2))} and is {LoadWords.Percent(met.BusiestUtilisation)} full";

    /// <summary>The share of time in which the demand fits, and of what it is silent; null where no failure rates are stated.</summary>
    public static string? Availability(DemandStudy study) => study.Availability is not { } up ? null
        : $"fits and reaches all hosts {Numerals.Fixed(up.Lower.Percent, 5)} % to {Numerals.Fixed(up.Upper.Percent, 5)} % of the time"
            + (study.TakenAsUp is { IsEmpty: false } silent
                ? $", as if no {string.Join(", ", silent.Select(LoadWords.Failure))} ever failed: no rate is stated"
                : "");

    /// <summary>What waits before the receiver of an incast; null for other demands.</summary>
    public static string? Queue(DemandStudy study) => study.Queue is not { } queue ? null
        : $"the receiver is asked for {LoadWords.Percent(queue.Overload)} of what it takes; a burst of all leaves "
            + $"{Numerals.Grouped((decimal)Math.Round(queue.QueueBytes))} bytes waiting";

    /// <summary>What is meant by a host with ports on many switches; null where none has more than a pair.</summary>
    public static string? Ports(DemandStudy study)
    {
        var network = study.Fabric.Map.Network;
        var most = 0;
        foreach (var host in study.Demand.Senders) most = Math.Max(most, SwitchesOf(network, host));
        return most <= UsualSwitches ? null
            : $"a host with ports on {most} switches counts as one: it sends and takes over any of them that lies on a shortest way, and "
                + "what has to go from one port to another inside a host is not counted";
    }

    private const int UsualSwitches = 2;

    private static int SwitchesOf(PlanNetwork network, int host)
    {
        var switches = new HashSet<int>();
        foreach (var link in network.UpLinks(host)) switches.Add(network.FarDevice(link, host));
        return switches.Count;
    }

    private static string Of(Delay delay) => $"{Numerals.Shown(delay.Total.Nanoseconds / 1000, "us")} over {delay.Links} links and "
        + $"{LoadWords.Switches(delay.Switches)} (switching {Nanoseconds(delay.Switching)}, codes {Nanoseconds(delay.Coding)}, "
        + $"way {Nanoseconds(delay.Way)})";

    private static string Nanoseconds(Duration duration) => Numerals.Shown(duration.Nanoseconds, "ns");
}
