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
            reasons.Add(PolarityWords.Angled(adapter));
        if (chain.Reversals > 0 && !table.IsReversalKnown(chain.Positions))
        {
            reasons.Add(PolarityWords.RowsUnknown(chain.Positions));
            return new PolarityAnswer
            {
                Chain = chain, Verdict = reasons.Count > 1 ? Verdict.Fail : Verdict.Unproven, Reasons = reasons.ToImmutable(),
            };
        }
        return chain.IsDuplex ? Duplex(chain, reasons)
            : chain.IsFanOut ? FanOut(chain, table, reasons)
            : Parallel(chain, table, reasons);
    }

    private static PolarityAnswer Parallel(FibreChain chain, PolarityTable table, ImmutableArray<string>.Builder reasons)
    {
        var map = chain.Link;
        if (table.LanesOf(chain.Positions) is not { } known)
        {
            reasons.Add(PolarityWords.LanesUnknown(chain.Positions));
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
            reasons.Add(PolarityWords.OtherOrder);
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

    /// <summary>The lanes of an array, each to a duplex port of its own.</summary>
    private static PolarityAnswer FanOut(FibreChain chain, PolarityTable table, ImmutableArray<string>.Builder reasons)
    {
        if (table.LanesOf(chain.Positions) is not { } known || chain.Parts.Any(p => !p.IsOrderKnown))
        {
            reasons.Add(table.LanesOf(chain.Positions) is null
                ? PolarityWords.LanesUnknown(chain.Positions)
                : PolarityWords.OrderUnknown);
            return new PolarityAnswer
            {
                Chain = chain, Verdict = reasons.Count > 1 ? Verdict.Fail : Verdict.Unproven, Reasons = reasons.ToImmutable(),
            };
        }
        var map = chain.StartsDuplex ? chain.Whole.Backward() : chain.Whole;
        var ports = Enumerable.Range(1, known.Value).Select(lane => PortOf(map[lane], map[chain.Positions + 1 - lane])).ToList();
        var isCrossed = ports.TrueForAll(p => p.Port > 0 && p.IsCrossed);
        ImmutableArray<int> order = [.. ports.Select(p => p.Port)];
        if (ports.Exists(p => p.Port == 0)) reasons.Add("the two fibres of a lane arrive at two ports");
        else if (!isCrossed) reasons.Add(PolarityWords.NotCrossed);
        else if (!order.SequenceEqual(Enumerable.Range(1, known.Value))) reasons.Add(PolarityWords.OtherOrder);
        return new PolarityAnswer
        {
            Chain = chain,
            Verdict = reasons.Count == 0 ? Verdict.Pass : Verdict.Fail,
            IsCrossed = isCrossed,
            LaneOrder = order,
            Map = chain.Link.Arrivals,
            Reasons = reasons.ToImmutable(),
        };
    }

    private static PolarityAnswer Duplex(FibreChain chain, ImmutableArray<string>.Builder reasons)
    {
        var whole = chain.Whole;
        var pairs = Enumerable.Range(1, chain.Positions / 2)
            .Select(pair => (Near: pair, Way: PortOf(whole[(2 * pair) - 1], whole[2 * pair])))
            .Select(p => new PairWay(p.Near, p.Way.Port, p.Way.IsCrossed)).ToImmutableArray();
        if (pairs.Any(p => p.Far == 0)) reasons.Add("the two fibres of a port arrive at two ports");
        else if (pairs.Any(p => !p.IsCrossed)) reasons.Add("transmitters meet transmitters: the ways cross an even number of times");
        if (reasons.Count == 0 && pairs.Any(p => p.Far != p.Near)) reasons.Add(PolarityWords.OtherPorts);
        var isOrderKnown = chain.Parts.All(p => p.IsOrderKnown);
        // Transitions alike that lead each port to its own number in one order do so in every order.
        var isPortKnown = isOrderKnown || (pairs.All(p => p.Far == p.Near) && AreAlike(chain));
        if (!isPortKnown) reasons.Add(PolarityWords.OrderUnknown);
        else if (!isOrderKnown) reasons.Add(PolarityWords.FibresUnknown);
        return new PolarityAnswer
        {
            Chain = chain,
            Verdict = pairs.All(p => p.Far > 0 && p.IsCrossed) && !(chain.IsAngled && chain.Parts.Any(p => !p.TakesAngled))
                ? Verdict.Pass
                : Verdict.Fail,
            IsCrossed = pairs.All(p => p.Far > 0 && p.IsCrossed),
            Pairs = isPortKnown ? pairs : [],
            Map = isOrderKnown ? chain.Link.Arrivals : [],
            Reasons = reasons.ToImmutable(),
        };
    }

    private static bool AreAlike(FibreChain chain) =>
        chain.Parts.Where(p => p.Kind == ArrayPartKind.Transition).Select(p => p.Name).Distinct().Count() == 1;

    /// <summary>The port at which what is sent and what is heard arrive together, 0 for none; crossed where what is sent arrives at the
    /// second fibre, which a receiver sits on.</summary>
    private static (int Port, bool IsCrossed) PortOf(int sent, int heard)
    {
        var isOne = (sent + 1) / 2 == (heard + 1) / 2;
        return (isOne ? (sent + 1) / 2 : 0, isOne && sent % 2 == 0);
    }
}
