using System.Collections.Immutable;
using Lanewright.Engineering.Load;

namespace Lanewright.Deliverables;

/// <summary>A question about load: the demands asked about, and what beyond loads and single failures is wanted.</summary>
/// <param name="Demands">The demands, in the order of the plan; one at least.</param>
/// <param name="Fabric">The network of the first of them.</param>
/// <param name="Pairs">Whether two failures at once are asked about.</param>
/// <param name="Seed">Fixes the sample of pairs where there are too many.</param>
public sealed record LoadAnswer(ImmutableArray<DemandStudy> Demands, NetworkStudy Fabric, bool Pairs, ulong Seed)
{
    /// <summary>Errors that reading and binding the plan found: what is answered then is of what could be read.</summary>
    public int Errors { get; init; }

    /// <summary>Pairs computed at most; more are sampled.</summary>
    public const int MostPairs = 4000;

    /// <summary>The demand that fills a link most. A hose counts only where there is nothing else: it has a figure of its own.</summary>
    public DemandStudy Governing => Demands.OrderBy(d => d.IsHose).ThenByDescending(d => d.IsHose ? default : d.MaxUtilisation)
        .ThenBy(d => d.Demand.Index).First();

    /// <summary>The worst case that any traffic can make: of the fullest hose asked about, or of all hosts at line rate. Null where
    /// the ideal split is too large to solve.</summary>
    public (NetworkStudy Fabric, HoseWorstCase Case)? Worst
    {
        get
        {
            if (FullestHose is { WorstCase: { } stated } hose) return (hose.Fabric, stated);
            return Fabric.WorstCase is { } any ? (Fabric, any) : null;
        }
    }

    /// <summary>Whose rates the worst case keeps to, in words.</summary>
    public string WorstOf => FullestHose is { WorstCase: not null } hose
        ? $"the hosts of '{hose.Demand.Name}' at {(hose.Demand.Rate is { } rate ? $"{rate} each" : "line rate")}"
        : "all hosts at line rate";

    private DemandStudy? FullestHose =>
        Demands.Where(d => d.IsHose).OrderByDescending(d => d.MaxUtilisation).ThenBy(d => d.Demand.Index).FirstOrDefault();
}
