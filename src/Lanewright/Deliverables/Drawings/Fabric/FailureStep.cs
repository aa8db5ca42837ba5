using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Failures of one kind that do the same: a step of the curve.</summary>
/// <param name="Kind">What fails.</param>
/// <param name="Example">One of them by name.</param>
/// <param name="Size">How many there are.</param>
/// <param name="Utilisation">How full the fullest link then is, in whole tenths of a per cent.</param>
/// <param name="HostsCut">Hosts that are up and cut off.</param>
public sealed record FailureStep(FailureKind Kind, string Example, long Size, Share Utilisation, long HostsCut)
{
    /// <summary>The steps of a demand, the worst first: fullest link, then hosts cut off, then kind.</summary>
    public static ImmutableArray<FailureStep> Of(DemandStudy study)
    {
        if (study.Sweep is not { } sweep) return [];
        var units = study.Fabric.Failures;
        return
        [
            .. sweep.Classes
                .GroupBy(c => (c.Kind, Tenths: Math.Round(study.After(c).Percent, 1), c.MembersCut))
                .Select(g => new FailureStep(g.Key.Kind, units[g.Min(c => c.Units[0])].Name, g.Sum(c => (long)c.Size),
                    Share.FromPercent(g.Key.Tenths), g.Key.MembersCut))
                .OrderByDescending(s => s.Utilisation).ThenByDescending(s => s.HostsCut)
                .ThenBy(s => s.Kind).ThenBy(s => s.Example, Text.NaturalOrder.Instance),
        ];
    }
}
