using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What links between two kinds of port cost at the least over a length, for any number of them.</summary>
/// <param name="ways">Each way that could be the cheapest: hundredths to buy one, and watts it draws.</param>
/// <param name="wattYear">Hundredths that a watt costs in a year.</param>
internal sealed class LinkRates(ImmutableArray<(double Price, double Watts)> ways, double wattYear)
{
    /// <summary>Whether nothing carries such a link.</summary>
    public bool IsEmpty => ways.IsEmpty;

    /// <summary>Watts one link draws at the least.</summary>
    public double LeastWatts { get; } = ways.Select(w => w.Watts).DefaultIfEmpty(0).Min();

    /// <summary>Hundredths so many links cost at the least; not a number when none can be made.</summary>
    /// <param name="links">Links at the end.</param>
    /// <param name="linkYears">Links added up over the years they run.</param>
    public double Cost(double links, double linkYears)
    {
        var least = double.NaN;
        foreach (var (price, watts) in ways)
        {
            var cost = (price * links) + (watts * wattYear * linkYears);
            if (!(cost >= least)) least = cost;
        }
        return least;
    }
}
