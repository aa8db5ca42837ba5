using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What is wanted, with hosts that have a model and a hall they stand in.</summary>
/// <param name="Wanted">What is wanted.</param>
/// <param name="Hosts">The kinds of host.</param>
/// <param name="Hall">The hall.</param>
/// <param name="Free">What exists already.</param>
internal sealed record FabricDemand(WantedFabric Wanted, ImmutableArray<HostBuild> Hosts, FabricHall Hall, FreeItems Free)
{
    private readonly ImmutableArray<ImmutableArray<int>> counts =
    [
        .. Enumerable.Range(0, Wanted.Years + 1).Select(year =>
            Hosts.Select(h => HostBuild.CountIn(h.Demand, year, Wanted.Growth)).ToImmutableArray()),
    ];

    /// <summary>Hosts of each kind after the last year.</summary>
    public ImmutableArray<int> Finals => counts[^1];

    /// <summary>Whether the hosts stay as many as they are.</summary>
    public bool IsSteady => counts[0].SequenceEqual(counts[^1]);

    /// <summary>Hosts of each kind at the beginning of a year.</summary>
    public ImmutableArray<int> CountsIn(int year) => counts[year];
}
