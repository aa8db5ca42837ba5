using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The hall a fabric is laid out in: racks in the order hosts fill them, and racks for upper tiers, nearest to all hosts
/// first.</summary>
internal sealed class FabricHall
{
    private FabricHall(ImmutableArray<Rack> hostRacks, ImmutableArray<Rack> spineRacks, bool isStandard)
    {
        HostRacks = hostRacks;
        IsStandard = isStandard;
        // The weighted median of the hosts over the racks there are: the rack with the least way to all of them comes first.
        SpineRacks =
        [
            .. spineRacks
                .Select(s => (Rack: s, Way: hostRacks.Sum(h => RackRoute.Across(s, h).Metres)))
                .OrderBy(s => Math.Round(s.Way, 4))
                .ThenBy(s => s.Rack.Index)
                .Select(s => s.Rack),
        ];
    }

    /// <summary>Racks of hosts: kind after kind, each beginning a rack of its own.</summary>
    public ImmutableArray<Rack> HostRacks { get; }

    /// <summary>Racks of upper tiers.</summary>
    public ImmutableArray<Rack> SpineRacks { get; }

    /// <summary>Racks named for hosts that none of them needs.</summary>
    public ImmutableArray<Rack> SpareRacks { get; private init; } = [];

    /// <summary>Racks for leaves that have no room above their hosts: those kept for upper tiers, and those no host needs.</summary>
    public IEnumerable<Rack> LeafRacks => SpineRacks.Concat(SpareRacks).DistinctBy(r => r.Index);

    /// <summary>Whether it was laid out by rule.</summary>
    public bool IsStandard { get; }

    /// <summary>All racks, those of hosts first.</summary>
    public ImmutableArray<Rack> Racks =>
        [.. HostRacks.Concat(SpineRacks).Concat(SpareRacks).DistinctBy(r => r.Index).OrderBy(r => r.Index)];

    /// <summary>Index among the racks of hosts of the first rack of each kind; one more entry for the end.</summary>
    public ImmutableArray<int> FirstRack { get; private init; } = [];

    /// <summary>The hall for a demand, or null with what is in the way.</summary>
    public static FabricHall? Of(WantedFabric wanted, StandardsLibrary standards, out string fault)
    {
        fault = "";
        var first = ImmutableArray.CreateBuilder<int>();
        first.Add(0);
        foreach (var demand in wanted.Hosts)
        {
            var hosts = HostBuild.CountIn(demand, wanted.Years, wanted.Growth);
            first.Add(first[^1] + ((hosts + demand.PerRack - 1) / demand.PerRack));
        }
        var needed = RacksFor(wanted);
        var hall = wanted.HostRacks.IsEmpty
            ? Standard(needed, standards)
            : new FabricHall([.. wanted.HostRacks.Take(needed)], wanted.SpineRacks, isStandard: false);
        if (hall.HostRacks.Length < needed)
            fault = $"the hosts fill {needed} racks{After(wanted)} and {Numerals.Whole(hall.HostRacks.Length)} are named for them";
        else if (hall.HostRacks.Concat(hall.SpineRacks).Select(r => r.Hall).Distinct().Count() > 1)
            fault = "the racks named stand in several halls; name racks of one";
        return fault.Length > 0
            ? null
            : new FabricHall(hall.HostRacks, hall.SpineRacks, hall.IsStandard)
            {
                FirstRack = first.ToImmutable(),
                SpareRacks = [.. wanted.HostRacks.Skip(needed).Where(r => r.Hall == hall.HostRacks[0].Hall)],
            };
    }

    private static string After(WantedFabric wanted) =>
        wanted.Growth.Value > 0 && wanted.Years > 0 ? $" after {Numerals.Whole(wanted.Years)} years of growth" : "";

    /// <summary>Racks that the hosts fill after the last year; kinds share none.</summary>
    public static int RacksFor(WantedFabric wanted) => wanted.Hosts.Sum(h =>
        (HostBuild.CountIn(h, wanted.Years, wanted.Growth) + h.PerRack - 1) / h.PerRack);

    /// <summary>Rows of hosts with rows for upper tiers in their middle.</summary>
    private static FabricHall Standard(int hostRacks, StandardsLibrary standards)
    {
        var inRow = (int)standards.Practice("hall", "row-racks").Value;
        var pitch = Length.FromMetres(standards.Practice("hall", "row-pitch").Value);
        var perSpineRow = (int)standards.Practice("hall", "rows-per-spine-row").Value;
        var rows = (hostRacks + inRow - 1) / inRow;
        var spineRows = 1 + (rows / perSpineRow);
        var before = (rows + 1) / 2;
        var hall = new Hall(0, "site", "hall", Hall.UsualPathwayHeight, default, default, default);
        var type = RackType.Standard(standards);
        var hosts = Enumerable.Range(0, hostRacks).Select(i =>
            RackAt(i, "R", i / inRow, i % inRow, (i / inRow) < before ? i / inRow : (i / inRow) + spineRows));
        var spines = Enumerable.Range(0, spineRows * inRow).Select(i =>
            RackAt(hostRacks + i, "S", i / inRow, i % inRow, before + (i / inRow)));
        return new FabricHall([.. hosts], [.. spines], isStandard: true);

        Rack RackAt(int index, string letter, int row, int number, int place) => new(
            index, hall, letter + Numerals.Whole(row + 1), number + 1,
            default(Length) + (type.Width * (number + 0.5)), pitch * place, type);
    }
}
