using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Failures of one kind that do the same: a step of the curve.</summary>
/// <param name="Kind">What fails.</param>
/// <param name="Unit">One of them, by its number among all that may fail.</param>
/// <param name="Example">That one by name.</param>
/// <param name="Size">How many there are.</param>
/// <param name="Utilisation">How full the fullest link then is, in whole tenths of a per cent.</param>
/// <param name="HostsCut">Hosts that nobody reaches then: cut off, or down themselves.</param>
/// <param name="LostGigabits">Traffic lost, in Gb/s: of the worst of them.</param>
public sealed record FailureStep(
    FailureKind Kind, int Unit, string Example, long Size, Share Utilisation, long HostsCut, double LostGigabits)
{
    /// <summary>The steps of a demand, what costs most first: hosts cut off, then traffic lost, then fullest link, then kind.</summary>
    public static ImmutableArray<FailureStep> Of(DemandStudy study)
    {
        var units = study.Fabric.Failures;
        return
        [
            .. study.Failures
                .GroupBy(c => (c.Kind, Tenths: Math.Round(study.After(c).Percent, 1), c.HostsLost))
                .Select(g => (g.Key, First: g.Min(c => c.Units[0]), All: g))
                .Select(g => new FailureStep(g.Key.Kind, g.First, units[g.First].Name, g.All.Sum(c => (long)c.Size),
                    Share.FromPercent(g.Key.Tenths), g.Key.HostsLost, Math.Round(g.All.Max(c => c.LostGigabits), 1)))
                .OrderByDescending(s => s.HostsCut).ThenByDescending(s => s.LostGigabits).ThenByDescending(s => s.Utilisation)
                .ThenBy(s => s.Kind).ThenBy(s => s.Example, Text.NaturalOrder.Instance),
        ];
    }

    /// <summary>The same steps as a curve shows them: the fullest link first, then what costs most.</summary>
    public static ImmutableArray<FailureStep> ByFullest(ImmutableArray<FailureStep> steps) =>
        [.. steps.OrderByDescending(s => s.Utilisation)];

    /// <summary>So many of the steps, in their order: those with the fullest links and those that cost most, in turn.</summary>
    /// <param name="steps">The steps, what costs most first.</param>
    /// <param name="most">How many at most.</param>
    public static ImmutableArray<FailureStep> Telling(ImmutableArray<FailureStep> steps, int most)
    {
        if (steps.Length <= most) return steps;
        var fullest = ByFullest(steps);
        var kept = fullest.Zip(steps, (full, dear) => new[] { full, dear }).SelectMany(s => s).Distinct().Take(most).ToHashSet();
        return [.. steps.Where(kept.Contains)];
    }

    /// <summary>The step after which a link is fullest; the first of those equally full.</summary>
    public static FailureStep? Fullest(IEnumerable<FailureStep> steps) => steps.MaxBy(s => s.Utilisation);
}
