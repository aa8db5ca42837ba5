using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Sorts all links of a plan into classes, and links that share a split cage into bundles.</summary>
public sealed class LinkClasses
{
    private readonly Plan plan;
    private readonly LengthGrid grid;
    private readonly RouteLength route;
    private readonly LaidDetours detours;
    private readonly Dictionary<LinkClassKey, int> classByKey = [];
    private readonly List<LinkClassKey> keys = [];
    private readonly List<int> counts = [];
    private readonly List<int> firsts = [];
    private readonly List<SortedSet<int>> statements = [];
    private readonly int[] kindOf;
    private readonly List<EndSpec> ends = [];
    private readonly Dictionary<(Model.Catalogues.CageModel Cage, int Ways, Watts? Limit), short> endByContent = [];
    private readonly Dictionary<(int Cage, int Ways), short>[] endByPort;
    private readonly ImmutableArray<Model.Places.RackType> rackTypes;
    private readonly List<ImmutableArray<Model.Places.HallRoute>> routesPassed = [];
    private readonly Dictionary<(int One, string More), short> routesByKey = [];

    /// <summary>Kind of each rack, as a place among the kinds.</summary>
    private readonly short[] typeOfRack;

    private LinkClasses(Plan plan, RouteLength route, LaidDetours detours)
    {
        this.plan = plan;
        this.route = route;
        this.detours = detours;
        grid = new LengthGrid(plan.Catalogue, plan.Stock.Select(s => s.Length).OfType<Length>());
        rackTypes = [.. plan.Building.Racks.Select(r => r.Type).Distinct()];
        typeOfRack = [.. plan.Building.Racks.Select(r => (short)rackTypes.IndexOf(r.Type))];
        // Groups laid out alike share what is known of their ports.
        var known = plan.Devices.Groups.Select(g => g.Layout).Distinct()
            .ToDictionary(l => l, _ => new Dictionary<(int Cage, int Ways), short>());
        endByPort = [.. plan.Devices.Groups.Select(g => known[g.Layout])];
        kindOf = StatementKinds.FirstAlike(plan.Statements);
        Trunks = new TrunkWays(plan, route, detours);
        Bundles = CageBundles.Of(plan);
        ClassOf = new int[plan.Links.Count];
        UnmeasuredLinks = [];
    }

    /// <summary>The classes, in the order of their first links.</summary>
    public ImmutableArray<LinkClass> All { get; private set; } = [];

    /// <summary>Class of each link.</summary>
    public int[] ClassOf { get; }

    /// <summary>Lengths of the trunks, and how links go through them.</summary>
    public TrunkWays Trunks { get; }

    /// <summary>Links that share split cages.</summary>
    public CageBundles Bundles { get; }

    /// <summary>One link of each statement whose length cannot be told, by statement.</summary>
    public SortedDictionary<int, int> UnmeasuredLinks { get; }

    /// <summary>Classes of a plan whose cables all go the shortest way.</summary>
    public static LinkClasses Of(Plan plan) => Of(plan, new RouteLength(plan), LaidDetours.None);

    /// <summary>Classes of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="route">Measures lengths.</param>
    /// <param name="detours">Cables that do not go the shortest way.</param>
    public static LinkClasses Of(Plan plan, RouteLength route, LaidDetours detours)
    {
        var classes = new LinkClasses(plan, route, detours);
        classes.Sort();
        return classes;
    }

    private void Sort()
    {
        ExpectWays();
        var needed = new double[plan.Links.Count];
        for (var link = 0; link < needed.Length; link++) needed[link] = Needed(link);
        Bundles.RaiseToLongest(needed, link => !StartsApart(link));
        var far = FarNeeded();
        // Neighbours are mostly alike, which is sooner seen than looked up.
        var (last, lastKey, lastStatement) = (-1, default(LinkClassKey), -1);
        for (var link = 0; link < needed.Length; link++)
        {
            var key = KeyOf(link, needed[link], far.Length == 0 ? double.NaN : far[link]);
            var statement = plan.Links.Statement(link);
            if (last < 0 || key != lastKey || statement != lastStatement)
            {
                (last, lastKey, lastStatement) = (IndexOf(key, link), key, statement);
                statements[last].Add(statement);
            }
            counts[last]++;
            ClassOf[link] = last;
        }
        All = [.. keys.Select((key, index) => ClassFor(key, index))];
    }

    /// <summary>The class of a key; a link begins one that there is not yet.</summary>
    private int IndexOf(LinkClassKey key, int link)
    {
        if (classByKey.TryGetValue(key, out var index)) return index;
        index = keys.Count;
        classByKey.Add(key, index);
        keys.Add(key);
        counts.Add(0);
        firsts.Add(link);
        statements.Add([]);
        return index;
    }

    /// <summary>Racks are searched from once each when it is known what will be asked.</summary>
    private void ExpectWays()
    {
        if (route.Ways is not { } ways) return;
        var questions = new HashSet<WayQuestion>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var statement = plan.Statements[plan.Links.Statement(link)];
            if (statement.Through.IsEmpty
                && route.QuestionOf(plan.Links.FromDevice(link), plan.Links.ToDevice(link), statement.Side) is { } question)
                questions.Add(question);
        }
        ways.Expect(questions);
    }

    /// <summary>Metres the way of a link needs; not a number when it cannot be told.</summary>
    private double Needed(int link)
    {
        var statement = plan.Links.Statement(link);
        var way = WayOf(link);
        var end = way?.NearPanel ?? plan.Links.ToDevice(link);
        var length = way is { IsMeasured: false } ? null : Measured(link, 0, plan.Links.FromDevice(link), end);
        if (length is null && plan.Statements[statement].Length is null) UnmeasuredLinks.TryAdd(statement, link);
        return length?.Metres ?? double.NaN;
    }

    /// <summary>Metres the second cords need, where links go through trunks; empty where none does.</summary>
    private double[] FarNeeded()
    {
        if (plan.Trunks.IsEmpty) return [];
        var far = new double[plan.Links.Count];
        for (var link = 0; link < far.Length; link++)
        {
            var statement = plan.Links.Statement(link);
            var way = WayOf(link);
            var length = way is null ? null : Measured(link, way.Legs.Length, way.FarPanel, plan.Links.ToDevice(link));
            if (way is not null && length is null) UnmeasuredLinks.TryAdd(statement, link);
            far[link] = length?.Metres ?? double.NaN;
        }
        Bundles.RaiseToLongest(far, link => !EndsApart(link));
        return far;
    }

    /// <summary>Length of a cord of a link, or of its cable.</summary>
    private Length? Measured(int link, int joint, int from, int to) =>
        detours.Ways.TryGetValue(new CableKey(CableKind.Cable, link, joint), out var way)
            ? route.Along(way, from, to).Total
            : route.Between(from, to, SideOf(link));

    /// <summary>Number of the routes between halls that a link passes, whichever way round; -1 where it passes none.</summary>
    private short RoutesOf(int link, int from, int to)
    {
        var passed = detours.Ways.TryGetValue(new CableKey(CableKind.Cable, link), out var way)
            ? way.Routes
            : route.RoutesOf(from, to, SideOf(link));
        if (passed.IsEmpty) return -1;
        var key = passed is [var only]
            ? (plan.Building.Routes.IndexOf(only), "")
            : (-1, string.Join(' ', passed.Select(r => plan.Building.Routes.IndexOf(r)).Order().Select(i => Numerals.Whole(i))));
        if (routesByKey.TryGetValue(key, out var number)) return number;
        number = checked((short)routesPassed.Count);
        routesPassed.Add(passed);
        return routesByKey[key] = number;
    }

    private string SideOf(int link) => plan.Statements[plan.Links.Statement(link)].Side;

    /// <summary>How a link goes through trunks; null where it goes through none.</summary>
    private TrunkWay? WayOf(int link) => plan.Trunks.IsEmpty
        ? null
        : Trunks.Of(plan.Statements[plan.Links.Statement(link)], plan.Links.FromDevice(link), plan.Links.ToDevice(link));

    /// <summary>Legs that come together behind duplex ports have cords of their own before them.</summary>
    private bool StartsApart(int link) =>
        WayOf(link) is { } way && Bundles.ShapeOf(link) == FanShape.ToEnd && IsDuplex(way.Legs[0], isFar: false);

    /// <summary>Legs that part before duplex ports have cords of their own behind them.</summary>
    private bool EndsApart(int link) =>
        WayOf(link) is { } way && Bundles.ShapeOf(link) == FanShape.FromEnd && IsDuplex(way.Legs[^1], isFar: true);

    private static bool IsDuplex(TrunkLeg leg, bool isFar) => leg.Trunk.CassetteAt(isFar != leg.IsTurned) is not null;

    private LinkClassKey KeyOf(int link, double metres, double farMetres)
    {
        var links = plan.Links;
        var from = links.FromDevice(link);
        var to = links.ToDevice(link);
        var statement = links.Statement(link);
        var place = double.IsNaN(metres) ? -1 : grid.PlaceOf(Length.FromMetres(metres));
        var stated = plan.Statements[statement].Length;
        var rackFrom = plan.Devices.Rack(from);
        var rackTo = plan.Devices.Rack(to);
        return new LinkClassKey(
            kindOf[statement],
            EndOf(from, links.FromPort(link)),
            EndOf(to, links.ToPort(link)),
            stated is null ? place : -1,
            stated is { } length ? WayPlace(metres, place, length) : -1,
            RoutesOf(link, from, to),
            rackFrom is null ? (short)-1 : typeOfRack[rackFrom.Index],
            rackTo is null ? (short)-1 : typeOfRack[rackTo.Index],
            Bundles.ShapeOf(link),
            double.IsNaN(farMetres) ? -1 : grid.PlaceOf(Length.FromMetres(farMetres)),
            WayOf(link)?.Turns ?? 0);
    }

    /// <summary>A way between two lengths of the grid is rounded up, but a cable that is as long as the way is long enough.</summary>
    private int WayPlace(double metres, int place, Length stated) =>
        place >= 0 && metres <= stated.Metres && grid.LengthOf(place) > stated ? LinkClassKey.AsLongAsStated : place;

    private short EndOf(int device, PortPlace port)
    {
        var group = plan.Devices.Group(device);
        var known = endByPort[group.Index];
        if (known.TryGetValue((port.Cage, port.Ways), out var index)) return index;
        return known[(port.Cage, port.Ways)] = EndOf(group, port);
    }

    private short EndOf(DeviceGroup group, PortPlace port)
    {
        var slot = group.Layout.Slots[port.Cage];
        var limit = slot.Cage.LimitOf(group.Layout.NumberInBank(port.Cage));
        var content = (slot.Cage, (int)port.Ways, limit);
        if (endByContent.TryGetValue(content, out var index)) return index;
        index = checked((short)ends.Count);
        var others = group.Layout.Slots.Select(s => s.Cage).Where(c => c != slot.Cage).Distinct();
        ends.Add(new EndSpec(index, slot.Cage, port.Ways, limit) { Elsewhere = [.. others] });
        endByContent.Add(content, index);
        return index;
    }

    private LinkClass ClassFor(LinkClassKey key, int index)
    {
        var sets = statements[index].Select(s => plan.Statements[s]).ToImmutableArray();
        var statement = sets[0];
        var way = key.NeededPlace == LinkClassKey.AsLongAsStated ? statement.Length
            : key.NeededPlace >= 0 ? grid.LengthOf(key.NeededPlace)
            : null;
        return new LinkClass
        {
            Index = index,
            Statement = statement,
            Statements = sets,
            From = ends[key.From],
            To = ends[key.To],
            Needed = statement.Length ?? (key.Place < 0 ? null : grid.LengthOf(key.Place)),
            Way = way,
            Through = WayOf(firsts[index]),
            FarNeeded = key.FarPlace < 0 ? null : grid.LengthOf(key.FarPlace),
            Joins = key.Routes < 0 ? null : RouteJoins.Of(routesPassed[key.Routes]),
            FromRack = key.FromRack < 0 ? null : rackTypes[key.FromRack],
            ToRack = key.ToRack < 0 ? null : rackTypes[key.ToRack],
            Shape = key.Shape,
            Count = counts[index],
            FirstLink = firsts[index],
        };
    }
}
