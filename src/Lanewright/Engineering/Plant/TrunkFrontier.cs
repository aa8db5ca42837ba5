using System.Collections.Immutable;

namespace Lanewright.Engineering.Plant;

/// <summary>For each number of trunks that suffices, the cheapest mix of so many: from the fewest on, as long as more of them cost
/// less.</summary>
public sealed class TrunkFrontier
{
    /// <summary>Cells of the table that are filled at most; a larger question is answered by one kind at a time.</summary>
    private const long MostCells = 4_000_000;

    private TrunkFrontier(ImmutableArray<TrunkMix> mixes, bool isExact, decimal bound)
    {
        Mixes = mixes;
        IsExact = isExact;
        Bound = bound;
    }

    /// <summary>The mixes, fewest trunks first; empty where no kind has ports.</summary>
    public ImmutableArray<TrunkMix> Mixes { get; }

    /// <summary>Whether every mix was looked at.</summary>
    public bool IsExact { get; }

    /// <summary>What no mix costs less than, in hundredths.</summary>
    public decimal Bound { get; }

    /// <summary>The frontier of a need.</summary>
    /// <param name="kinds">The kinds there are.</param>
    /// <param name="ports">Ports that are needed, 0 or more; at least one trunk is laid.</param>
    public static TrunkFrontier Of(ImmutableArray<TrunkKind> kinds, int ports)
    {
        if (kinds.IsEmpty) return new TrunkFrontier([], true, 0);
        var needed = Math.Max(1, ports);
        var most = (needed + kinds.Min(k => k.Ports) - 1) / kinds.Min(k => k.Ports);
        return (long)most * (needed + 1) <= MostCells ? Exact(kinds, needed, most) : Alone(kinds, needed);
    }

    /// <summary>The price of n trunks with at least p ports is that of one trunk and of n - 1 with what it leaves.</summary>
    private static TrunkFrontier Exact(ImmutableArray<TrunkKind> kinds, int needed, int most)
    {
        var last = new decimal[needed + 1];
        Array.Fill(last, decimal.MaxValue);
        last[0] = 0;
        var chosen = new List<int[]>();
        var mixes = ImmutableArray.CreateBuilder<TrunkMix>();
        var least = decimal.MaxValue;
        for (var trunks = 1; trunks <= most; trunks++)
        {
            var (prices, picks) = (new decimal[needed + 1], new int[needed + 1]);
            for (var p = 0; p <= needed; p++) (prices[p], picks[p]) = Cheapest(kinds, last, p);
            chosen.Add(picks);
            last = prices;
            if (prices[needed] >= least) continue;
            least = prices[needed];
            mixes.Add(Mix(kinds, chosen, needed));
        }
        return new TrunkFrontier(mixes.ToImmutable(), true, mixes[^1].Price.Hundredths);
    }

    private static (decimal Price, int Pick) Cheapest(ImmutableArray<TrunkKind> kinds, decimal[] before, int ports)
    {
        var (price, pick) = (decimal.MaxValue, -1);
        for (var k = 0; k < kinds.Length; k++)
        {
            var rest = before[Math.Max(0, ports - kinds[k].Ports)];
            if (rest == decimal.MaxValue || rest + kinds[k].Price.Hundredths >= price) continue;
            (price, pick) = (rest + kinds[k].Price.Hundredths, k);
        }
        return (price, pick);
    }

    private static TrunkMix Mix(ImmutableArray<TrunkKind> kinds, List<int[]> chosen, int needed)
    {
        var (counts, left) = (new int[kinds.Length], needed);
        for (var trunks = chosen.Count - 1; trunks >= 0; trunks--)
        {
            var kind = chosen[trunks][left];
            counts[kind]++;
            left = Math.Max(0, left - kinds[kind].Ports);
        }
        return new TrunkMix([.. kinds.Select((k, i) => (k, counts[i])).Where(c => c.Item2 > 0)]);
    }

    /// <summary>One kind for all: the fewest are exact, and no mix costs less than all ports at the price of the cheapest port.</summary>
    private static TrunkFrontier Alone(ImmutableArray<TrunkKind> kinds, int needed)
    {
        var mixes = ImmutableArray.CreateBuilder<TrunkMix>();
        foreach (var mix in kinds.Select(k => Alone(k, needed)).OrderBy(m => m.Trunks).ThenBy(m => m.Price))
            if (mixes.Count == 0 || mix.Price < mixes[^1].Price) mixes.Add(mix);
        return new TrunkFrontier(mixes.ToImmutable(), false, needed * kinds.Min(k => k.Price.Hundredths / k.Ports));
    }

    /// <summary>Trunks of one kind.</summary>
    public static TrunkMix Alone(TrunkKind kind, int ports) =>
        new([(kind, Math.Max(1, (ports + kind.Ports - 1) / kind.Ports))]);
}
