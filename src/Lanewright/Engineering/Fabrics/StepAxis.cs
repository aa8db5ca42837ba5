using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A quantity that goes in whole steps.</summary>
/// <param name="Low">The lowest value looked at.</param>
/// <param name="Now">The value that was asked.</param>
/// <param name="High">The highest value looked at.</param>
/// <param name="Ask">The question with a value.</param>
internal sealed record StepAxis(int Low, int Now, int High, Func<int, WantedFabric> Ask)
{
    /// <summary>Whether a higher value is harder to have; otherwise a lower one is.</summary>
    public bool IsHarderUpward { get; init; } = true;

    /// <summary>Whether all values are asked of the same hosts in the same places.</summary>
    public bool KeepsHosts { get; init; }

    /// <summary>Whether a kind of host may have fewer where there are more together, as shares are rounded: then no value bounds
    /// another.</summary>
    public bool IsUneven { get; init; }

    /// <summary>Marks that cut the range into parts alike, what was asked among them.</summary>
    /// <param name="parts">How many parts.</param>
    public ImmutableSortedSet<int> Marks(int parts)
    {
        var ratio = (double)Math.Max(1, High) / Math.Max(1, Low);
        var marks = Enumerable.Range(0, parts + 1).Select(i => Low > 0
            ? (int)Math.Round(Low * Math.Pow(ratio, (double)i / parts))
            : Low + (int)((long)(High - Low) * i / parts));
        return [Low, Now, High, .. marks.Where(m => m > Low && m < High)];
    }

    /// <summary>The easier of two values.</summary>
    public int Easier(int low, int high) => IsHarderUpward ? low : high;

    /// <summary>The harder of two values.</summary>
    public int Harder(int low, int high) => IsHarderUpward ? high : low;
}
