using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Deals loads out to the phases of strips so that the fullest phase carries least. Racks alike are dealt once.</summary>
public sealed class PhaseDealer
{
    private readonly Dictionary<string, PhaseDeal> known = new(StringComparer.Ordinal);

    /// <summary>The best order, or the best that a bounded search finds.</summary>
    /// <param name="loads">Watts, the largest first.</param>
    /// <param name="phases">1 or 3.</param>
    /// <param name="isBetween">Whether outlets lie between two phases.</param>
    public PhaseDeal Of(ImmutableArray<double> loads, int phases, bool isBetween)
    {
        if (phases == 1) return new PhaseDeal([.. loads.Select(_ => 0)], true);
        var key = $"{isBetween} {string.Join(' ', loads.Select(l => Numerals.Plain(l)))}";
        if (!known.TryGetValue(key, out var deal)) known[key] = deal = new PhaseSearch(loads, isBetween).Find();
        return deal;
    }
}
