using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Power;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The hall a fabric is laid out in: racks in the order hosts fill them, and racks for upper tiers, nearest to all hosts
/// first.</summary>
internal sealed class FabricHall
{
    private readonly Dictionary<(int Rack, int Units), ImmutableArray<int>> hostUnits = [];

    private FabricHall(ImmutableArray<Rack> hostRacks, ImmutableArray<Rack> spineRacks, bool isStandard, ShortestWays? ways)
    {
        HostRacks = hostRacks;
        IsStandard = isStandard;
        Ways = ways;
        // The weighted median of the hosts over the racks there are: the rack with the least way to all of them comes first.
        SpineRacks =
        [
            .. spineRacks
                .Select(s => (Rack: s, Way: hostRacks.Sum(h => Across(s, h).Metres)))
                .OrderBy(s => Math.Round(s.Way, 4))
                .ThenBy(s => s.Rack.Index)
                .Select(s => s.Rack),
        ];
    }

    /// <summary>Racks of hosts: kind after kind, each beginning a rack of its own.</summary>
    public ImmutableArray<Rack> HostRacks { get; }

    /// <summary>Racks of upper tiers.</summary>
    public ImmutableArray<Rack> SpineRacks { get; }

    /// <summary>Racks named for hosts that none of them needs, or that do not take them.</summary>
    public ImmutableArray<Rack> SpareRacks { get; private init; } = [];

    /// <summary>Racks for leaves that have no room above their hosts: those kept for upper tiers, and those no host needs.</summary>
    public IEnumerable<Rack> LeafRacks => SpineRacks.Concat(SpareRacks).DistinctBy(r => r.Index);

    /// <summary>Whether it was laid out by rule.</summary>
    public bool IsStandard { get; }

    /// <summary>Ways along its pathways; null where it has none.</summary>
    public ShortestWays? Ways { get; }

    /// <summary>What its racks take; null where nothing is said of that.</summary>
    public HallLimits? Limits { get; private init; }

    /// <summary>All racks, those of hosts first.</summary>
    public ImmutableArray<Rack> Racks =>
        [.. HostRacks.Concat(SpineRacks).Concat(SpareRacks).DistinctBy(r => r.Index).OrderBy(r => r.Index)];

    /// <summary>Index among the racks of hosts of the first rack of each kind; one more entry for the end.</summary>
    public ImmutableArray<int> FirstRack { get; private init; } = [];

    /// <summary>The hall for a demand, or null with what is in the way.</summary>
    public static FabricHall? Of(
        WantedFabric wanted, ImmutableArray<HostBuild> hosts, FinderContext context, PhaseDealer dealer, out string fault)
    {
        fault = "";
        var first = ImmutableArray.CreateBuilder<int>();
        first.Add(0);
        foreach (var demand in wanted.Hosts) first.Add(first[^1] + RacksFor(wanted, demand));
        if (wanted.HostRacks.IsEmpty)
        {
            var standard = Standard(first[^1], context.Standards);
            return new FabricHall(standard.HostRacks, standard.SpineRacks, isStandard: true, ways: null)
            {
                FirstRack = first.ToImmutable(),
            };
        }
        if (wanted.HostRacks.Concat(wanted.SpineRacks).Select(r => r.Hall).Distinct().Count() > 1)
        {
            fault = "the racks named stand in several halls; name racks of one";
            return null;
        }
        var limits = HallLimits.Of(wanted.Site, [.. wanted.HostRacks, .. wanted.SpineRacks], context, dealer);
        var filling = RackFilling.Of(wanted, hosts, limits);
        if (filling.Fault.Length > 0)
        {
            fault = filling.Fault;
            return null;
        }
        var ways = wanted.Site is { } site && site.Building.Pathways.Any(p => p.Hall == wanted.HostRacks[0].Hall)
            ? new ShortestWays(WayNet.Of(site.Building, context.Standards))
            : null;
        return new FabricHall(filling.Racks, wanted.SpineRacks, isStandard: false, ways)
        {
            FirstRack = first.ToImmutable(),
            SpareRacks = filling.Left,
            Limits = limits,
        };
    }

    /// <summary>Racks that the hosts fill after the last year; kinds share none.</summary>
    public static int RacksFor(WantedFabric wanted) => wanted.Hosts.Sum(h => RacksFor(wanted, h));

    private static int RacksFor(WantedFabric wanted, HostDemand demand) =>
        (HostBuild.CountIn(demand, wanted.Years, wanted.Growth) + demand.PerRack - 1) / demand.PerRack;

    /// <summary>The way between two racks at the height of pathways: along trays where there are any, straight otherwise.</summary>
    public Length Across(Rack from, Rack to) =>
        from.Index != to.Index && Ways?.Between(WayQuestion.Between(from.Index, to.Index, 0)) is { } way
            ? Length.FromMetres(way.Metres)
            : RackRoute.Across(from, to);

    /// <summary>The length of a cable between two heights in racks.</summary>
    /// <param name="route">Reckons lengths.</param>
    /// <param name="from">One rack.</param>
    /// <param name="heightFrom">Height of the device in it.</param>
    /// <param name="to">The other rack.</param>
    /// <param name="heightTo">Height of the device in that.</param>
    public Length Between(RackRoute route, Rack from, Length heightFrom, Rack to, Length heightTo) =>
        WayOf(from, heightFrom, to, heightTo) is { } way
            ? route.Along(way, from, heightFrom, to, heightTo).Total
            : route.Between(from, heightFrom, to, heightTo, RackRoute.Across(from, to));

    /// <summary>No cable between two racks is shorter: from the heights nearest to each pathway that comes to one of them to those at the
    /// other.</summary>
    public Length Least(RackRoute route, Rack from, Rack to)
    {
        var way = WayOf(from, from.Hall.PathwayHeight, to, to.Hall.PathwayHeight);
        return Nearest(from, to).Min(one => Nearest(to, from).Min(other => Between(route, from, one, to, other)));

        IEnumerable<Length> Nearest(Rack rack, Rack far) => Ways?.Net.DropHeights(rack.Index) is { } heights
            ? heights.Select(h => route.Nearest(rack, Length.FromMetres(h)))
            : [route.Nearest(rack, way?.HeightAt(rack, far) ?? rack.Hall.PathwayHeight)];
    }

    private CableWay? WayOf(Rack from, Length heightFrom, Rack to, Length heightTo) => from.Index == to.Index
        ? null
        : Ways?.Between(Ways.Net.QuestionOf(from, heightFrom, to, heightTo, 0));

    /// <summary>Lowest units of a full rack of hosts, from the floor up.</summary>
    /// <param name="rack">Which of the racks of hosts.</param>
    /// <param name="host">The hosts in it.</param>
    public ImmutableArray<int> HostUnits(int rack, HostBuild host)
    {
        var units = Math.Max(1, host.Model.Units);
        if (hostUnits.TryGetValue((rack, units), out var known) && known.Length >= host.Demand.PerRack) return known;
        var all = Limits?.UnitsUp(HostRacks[rack], units) ?? Enumerable.Range(0, host.Demand.PerRack).Select(i => 1 + (i * units));
        return hostUnits[(rack, units)] = [.. all.Take(host.Demand.PerRack)];
    }

    /// <summary>Rows of hosts with rows for upper tiers in their middle.</summary>
    private static (ImmutableArray<Rack> HostRacks, ImmutableArray<Rack> SpineRacks) Standard(int hostRacks, StandardsLibrary standards)
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
        return ([.. hosts], [.. spines]);

        Rack RackAt(int index, string letter, int row, int number, int place) => new(
            index, hall, letter + Numerals.Whole(row + 1), number + 1,
            default(Length) + (type.Width * (number + 0.5)), pitch * place, type);
    }
}
