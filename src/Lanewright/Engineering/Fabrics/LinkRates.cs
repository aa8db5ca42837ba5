using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What links between two kinds of port cost at the least over a length, for any number of them: each way that could be the
/// cheapest, with its price and with what its energy costs in a year.</summary>
/// <param name="ways">Hundredths each way costs to buy, and in each year it runs.</param>
internal sealed class LinkRates(ImmutableArray<(double Price, double Year)> ways)
{
    /// <summary>Whether nothing carries such a link.</summary>
    public bool IsEmpty => ways.IsEmpty;

    /// <summary>Hundredths so many links cost at the least; not a number when none can be made.</summary>
    /// <param name="links">Links at the end.</param>
    /// <param name="linkYears">Links added up over the years they run.</param>
    public double Cost(double links, double linkYears)
    {
        var least = double.NaN;
        foreach (var (price, year) in ways)
        {
            var cost = (price * links) + (year * linkYears);
            if (!(cost >= least)) least = cost;
        }
        return least;
    }
}
