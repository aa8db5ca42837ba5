namespace Lanewright.Engineering.Fabrics;

/// <summary>What links between two kinds of port cost at the least, length by length as it is asked for.</summary>
/// <param name="ends">The kinds of port.</param>
/// <param name="pricer">Ways to make them.</param>
/// <param name="free">What exists already.</param>
/// <param name="wattYear">Hundredths that a watt costs in a year.</param>
internal sealed class LinkReach(LinkEnds ends, LinkPricer pricer, FreeItems free, double wattYear)
{
    private LinkRates?[] known = [];

    /// <summary>The rates where no way is shorter than a place in the grid of lengths.</summary>
    public LinkRates From(int place)
    {
        if (place >= known.Length) Array.Resize(ref known, Math.Max(place + 1, 2 * known.Length));
        return known[place] ??= new LinkRates([.. pricer.Floors(ends, place).Select(f => ((double)f.Price(free), f.Watts))], wattYear);
    }
}
