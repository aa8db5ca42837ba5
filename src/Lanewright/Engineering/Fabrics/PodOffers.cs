using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Designs of three tiers that wait to be priced in the order of their bounds.</summary>
internal sealed class PodOffers(FabricShape shape, int planes, PodFloors floors, Incumbent incumbent)
{
    /// <summary>So many designs wait; pricing some lowers the limit for all others.</summary>
    private const int MostPending = 64;

    private readonly List<(FabricDesign Design, double Bound)> pending = [];

    /// <summary>Adds designs with each of the cores that could win.</summary>
    /// <param name="build">The aggregation switch.</param>
    /// <param name="up">How its uplinks are opened.</param>
    /// <param name="count">Aggregation switches of a pod.</param>
    /// <param name="rows">Leaves of each kind of host, and their pods.</param>
    /// <param name="least">Hundredths that leaves and aggregation switches cost at the least.</param>
    /// <param name="parallel">Links to each core.</param>
    /// <param name="perGroup">Cores that each aggregation switch is linked to.</param>
    /// <param name="cores">Cores to choose from.</param>
    public void Add(SwitchBuild build, PortUse up, int count, ImmutableArray<(PodRow Row, int Pods)> rows, double least,
        int parallel, int perGroup, List<CoreChoice> cores)
    {
        var pods = rows.Sum(r => r.Pods);
        foreach (var core in cores)
        {
            if ((long)pods * parallel > core.Most) continue;
            var below = least + floors.Standing(core.Build, (long)planes * count * perGroup);
            if (!incumbent.CouldWin(below)) continue;
            var links = (long)planes * pods * count * perGroup * parallel;
            var bound = below + floors.Trunks(core, links);
            if (!incumbent.CouldWin(bound)) continue;
            var design = new FabricDesign
            {
                Shape = shape,
                Planes = planes,
                Leaves = [.. rows.Select(r => r.Row.Choice(r.Pods))],
                Upper = new UpperChoice(build, count, [.. rows.Select(r => r.Row.Below.HostPorts)], up, parallel),
                Core = new UpperChoice(core.Build, perGroup, [core.Use]),
            };
            pending.Add((design, bound));
        }
        if (pending.Count >= MostPending) Price();
    }

    /// <summary>Prices what was found, cheapest first.</summary>
    public void Price()
    {
        foreach (var (design, bound) in pending.OrderBy(p => p.Bound)) incumbent.Offer(design, bound);
        pending.Clear();
    }
}
