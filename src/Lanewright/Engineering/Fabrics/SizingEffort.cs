namespace Lanewright.Engineering.Fabrics;

/// <summary>How long a search may look: a number of steps and not a time, so that the same question has the same answer on any
/// machine.</summary>
/// <param name="MostLooked">So many parts of the search of each shape are looked into at most; the others count for the bound
/// alone.</param>
/// <param name="MostPriced">So many designs of each shape are priced in any case; what is left then only counts for the bound.</param>
/// <param name="MostPricing">More are priced while all count no more than this, in parts of the search.</param>
/// <param name="MostSpread">So many of those are tried in all ways to spread them over racks.</param>
/// <param name="MostPricingParts">Parts of designs, which are the leaves of one kind of host, are priced while all count no more than
/// this.</param>
public sealed record SizingEffort(long MostLooked, int MostPriced, long MostPricing, int MostSpread, long MostPricingParts)
{
    /// <summary>Breaks the search off.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>No more is priced once all counts so much, however few: fabrics of several hundred thousand hosts take about a second
    /// each.</summary>
    public long MostPricingEver { get; init; } = long.MaxValue;

    /// <summary>For who asks what to buy.</summary>
    public static SizingEffort Whole { get; } = new(4_000_000, 200, 200_000, 8, 1_000_000) { MostPricingEver = 4_000_000 };

    /// <summary>Whether one design of a shape is enough, however dear: for who asks what can be had and not what is best.</summary>
    public bool StopsAtFirst { get; init; }

    /// <summary>For who asks, some dozens of times, whether some wishes can be kept.</summary>
    public static SizingEffort First { get; } = new(200_000, 50, 20_000, 0, 200_000) { StopsAtFirst = true };

    /// <summary>The same where the first search was broken off.</summary>
    public static SizingEffort Again { get; } = Whole with { StopsAtFirst = true };

    /// <summary>For who asks only whether anything can be had at all.</summary>
    public static SizingEffort Glance { get; } = new(20_000, 10, 0, 0, 20_000) { StopsAtFirst = true };
}
