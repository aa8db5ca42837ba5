using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Plant;

/// <summary>Whether transmitters meet receivers along a fibre way, and in which order the lanes arrive.</summary>
public sealed record PolarityAnswer
{
    /// <summary>The way.</summary>
    public required FibreChain Chain { get; init; }

    /// <summary>Pass, fail, or unproven where a needed map is not known.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Whether transmitters meet receivers, whatever the order of the lanes; null where it is not known.</summary>
    public bool? IsCrossed { get; init; }

    /// <summary>For each lane that is sent the lane it arrives at, 0 for none; empty for duplex ports and where it is not
    /// known.</summary>
    public ImmutableArray<int> LaneOrder { get; init; } = [];

    /// <summary>Where each duplex port arrives; empty for parallel optics and where it is not known.</summary>
    public ImmutableArray<PairWay> Pairs { get; init; } = [];

    /// <summary>Where each position of the way without its duplex cords arrives; empty where it is not known.</summary>
    public ImmutableArray<int> Map { get; init; } = [];

    /// <summary>What is wrong or not known, in words.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>The weakest mark of what it rests on.</summary>
    public Mark Mark => Chain.Parts.Aggregate(Mark.Seen, (mark, part) => Marks.Weaker(mark, part.Source.Mark));

    /// <summary>The answer for a way.</summary>
    /// <param name="chain">The way.</param>
    /// <param name="table">What is known of positions.</param>
    public static PolarityAnswer Of(FibreChain chain, PolarityTable table)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        if (chain.IsAngled && chain.Parts.FirstOrDefault(p => !p.TakesAngled) is { } adapter)
            reasons.Add($"angled ends do not meet in a type-{adapter.Name} adapter: take type A");
        if (chain.Reversals > 0 && !table.IsReversalKnown(chain.Positions))
        {
            reasons.Add($"how a reversing part leads {chain.Positions} positions in two rows is not known: take it from the drawing of the "
                + "assembly");
            return new PolarityAnswer
            {
                Chain = chain, Verdict = reasons.Count > 1 ? Verdict.Fail : Verdict.Unproven, Reasons = reasons.ToImmutable(),
            };
        }
        return chain.IsDuplex ? Duplex(chain, reasons) : Parallel(chain, table, reasons);
    }

    private static PolarityAnswer Parallel(FibreChain chain, PolarityTable table, ImmutableArray<string>.Builder reasons)
    {
        var map = chain.Link;
        if (table.LanesOf(chain.Positions) is not { } known)
        {
            reasons.Add($"the order of lanes on {chain.Positions} positions is not known, so only the map is told");
            return new PolarityAnswer
            {
                Chain = chain, Verdict = Verdict.Unproven, Map = map.Arrivals, Reasons = reasons.ToImmutable(),
            };
        }
        // Lane i is sent on position i and heard on position N+1-i.
        var order = Enumerable.Range(1, known.Value)
            .Select(lane => chain.Positions + 1 - map[lane])
            .Select(lane => lane <= known.Value ? lane : 0)
            .ToImmutableArray();
        var isCrossed = order.All(l => l > 0);
        if (!isCrossed)
            reasons.Add("transmitters do not meet receivers"
                + (chain.Parts.All(p => p.Map != ArrayMap.PairFlipped)
                    ? $": {chain.Reversals} parts turn the order round, and it takes an odd number"
                    : ""));
        else if (!order.SequenceEqual(Enumerable.Range(1, known.Value)))
            reasons.Add("transmitters meet receivers, but lanes arrive in another order, which takes the ports of a split cage apart");
        return new PolarityAnswer
        {
            Chain = chain,
            Verdict = reasons.Count == 0 ? Verdict.Pass : Verdict.Fail,
            IsCrossed = isCrossed,
            LaneOrder = order,
            Map = map.Arrivals,
            Reasons = reasons.ToImmutable(),
        };
    }

    private static PolarityAnswer Duplex(FibreChain chain, ImmutableArray<string>.Builder reasons)
    {
        var link = chain.Link;
        var pairs = Enumerable.Range(1, chain.Positions / 2).Select(pair => WayOf(chain, link, pair)).ToImmutableArray();
        if (pairs.Any(p => p.Far == 0)) reasons.Add("the two fibres of a port arrive at two ports");
        else if (pairs.Any(p => !p.IsCrossed)) reasons.Add("transmitters meet transmitters: the ways cross an even number of times");
        if (reasons.Count == 0 && pairs.Any(p => p.Far != p.Near))
            reasons.Add("ports arrive under other numbers: print the port map, do not take 1 to be 1");
        var isOrderKnown = chain.Parts.All(p => p.IsOrderKnown);
        if (!isOrderKnown) reasons.Add("which port is which inside the transition is not known: take it from its label");
        return new PolarityAnswer
        {
            Chain = chain,
            Verdict = pairs.All(p => p.Far > 0 && p.IsCrossed) && !(chain.IsAngled && chain.Parts.Any(p => !p.TakesAngled))
                ? Verdict.Pass
                : Verdict.Fail,
            IsCrossed = pairs.All(p => p.Far > 0 && p.IsCrossed),
            Pairs = isOrderKnown ? pairs : [],
            Map = isOrderKnown ? link.Arrivals : [],
            Reasons = reasons.ToImmutable(),
        };
    }

    /// <summary>Both fibres of a port followed to the far port. A transmitter sits on the first, a receiver on the second.</summary>
    private static PairWay WayOf(FibreChain chain, PositionMap link, int pair)
    {
        var sent = chain.ThroughFarCord(link[chain.ThroughNearCord((2 * pair) - 1)]);
        var heard = chain.ThroughFarCord(link[chain.ThroughNearCord(2 * pair)]);
        var isOne = (sent + 1) / 2 == (heard + 1) / 2;
        return new PairWay(pair, isOne ? (sent + 1) / 2 : 0, isOne && sent % 2 == 0);
    }
}
