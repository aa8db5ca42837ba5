using System.Collections.Immutable;
using Lanewright.Model.Wanted;
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

    /// <summary>Whether more comes from below than a ratio allows; in whole numbers, so that 5:2 is exactly 5:2.</summary>
    public bool Exceeds(Ratio most) =>
        (Int128)Below.BitsPerSecond * most.Denominator > (Int128)Above.BitsPerSecond * most.Numerator;

    /// <summary>Every tier with a tier above it.</summary>
    /// <param name="network">The network.</param>
    /// <param name="isMeant">Which of its switches are looked at; null for all.</param>
    public static ImmutableArray<TierOversubscription> Of(PlanNetwork network, Func<int, bool>? isMeant = null)
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
               where network.IsSwitch(device) && above[device] > 0 && (isMeant is null || isMeant(device))
               group device by network.Tier(device) into tier
               orderby tier.Key
               let worst = tier.MaxBy(d => (below[d] / (double)above[d], -d))
               select new TierOversubscription(tier.Key, tier.Count(), worst,
                   BitRate.FromBitsPerSecond(below[worst]), BitRate.FromBitsPerSecond(above[worst])),
        ];
    }
}
