using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>A device whose links to the tier above have several rates: a split that is equal fills the slowest first.</summary>
/// <param name="Device">The device.</param>
/// <param name="SlowestLink">One of its slowest links up.</param>
/// <param name="Slowest">Their rate.</param>
/// <param name="FastestLink">One of its fastest.</param>
/// <param name="Fastest">Their rate.</param>
public sealed record MixedRates(int Device, int SlowestLink, BitRate Slowest, int FastestLink, BitRate Fastest)
{
    /// <summary>All such devices of a network, in order.</summary>
    public static ImmutableArray<MixedRates> Of(PlanNetwork network)
    {
        var mixed = ImmutableArray.CreateBuilder<MixedRates>();
        for (var device = 0; device < network.Plan.Devices.Count; device++)
        {
            var links = network.UpLinks(device);
            if (links.Length < 2) continue;
            var (slow, fast) = (links[0], links[0]);
            foreach (var link in links)
            {
                if (network.Statement(link).Rate < network.Statement(slow).Rate) slow = link;
                if (network.Statement(link).Rate > network.Statement(fast).Rate) fast = link;
            }
            var (least, most) = (network.Statement(slow).Rate, network.Statement(fast).Rate);
            if (least < most) mixed.Add(new MixedRates(device, slow, least, fast, most));
        }
        return mixed.ToImmutable();
    }
}
