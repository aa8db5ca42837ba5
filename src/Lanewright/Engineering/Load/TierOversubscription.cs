using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>How much more the switches of a tier take from below than they can pass on above.</summary>
/// <param name="Tier">The tier, from 1 for leaves.</param>
/// <param name="Switches">Switches of the tier that have links up.</param>
/// <param name="Device">The most oversubscribed of them.</param>
/// <param name="Below">What that one takes from below.</param>
/// <param name="Above">What it can pass on above.</param>
public sealed record TierOversubscription(int Tier, int Switches, int Device, BitRate Below, BitRate Above)
{
    /// <summary>What comes from below over what goes up; 3 is 3:1.</summary>
    public double Ratio => Below.BitsPerSecond / (double)Above.BitsPerSecond;

    /// <summary>Every tier with a tier above it.</summary>
    public static ImmutableArray<TierOversubscription> Of(PlanNetwork network)
    {
        var devices = network.Plan.Devices.Count;
        var (below, above) = (new long[devices], new long[devices]);
        for (var device = 0; device < devices; device++)
        {
            foreach (var link in network.UpLinks(device))
            {
                var rate = network.Statement(link).Rate.BitsPerSecond;
                above[device] += rate;
                below[network.FarDevice(link, device)] += rate;
            }
        }
        return
        [
            .. from device in Enumerable.Range(0, devices)
               where network.IsSwitch(device) && above[device] > 0
               group device by network.Tier(device) into tier
               orderby tier.Key
               let worst = tier.MaxBy(d => (below[d] / (double)above[d], -d))
               select new TierOversubscription(tier.Key, tier.Count(), worst,
                   BitRate.FromBitsPerSecond(below[worst]), BitRate.FromBitsPerSecond(above[worst])),
        ];
    }
}
