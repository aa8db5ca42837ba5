using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns sites, halls, rows and routes into places.</summary>
internal sealed class BuildingBinder(PlanTree tree, StandardsLibrary standards, FindingSink findings)
{
    private const double UsualTrayDepth = 100;

    private readonly Dictionary<string, RackType> types = new(StringComparer.Ordinal);
    private readonly List<Site> sites = [];
    private readonly List<Hall> halls = [];
    private readonly List<Rack> racks = [];
    private readonly List<Pathway> pathways = [];
    private readonly List<(string Site, string Hall, string Row)> inDoubt = [];
    private bool hasRoutesInDoubt;

    /// <summary>All places.</summary>
    public Building Bind()
    {
        foreach (var (name, map, _) in tree.Named("racks", "the kind of rack")) types[name] = TypeOf(name, map);
        types.TryAdd(RackType.DefaultName, TypeOf(RackType.DefaultName, new MapNode(default, [])));
        foreach (var (site, map, _) in tree.Named("sites", "the site"))
        {
            sites.Add(new Site(sites.Count, site, PositionOrNull(map, "east"), PositionOrNull(map, "north"), map.Span)
            {
                Availability = map.Share("availability"),
            });
            // A site without halls is one where lines meet, unless the word was misspelt, which has been reported.
            if (map["halls"] is null && findings.HasErrorIn(map.Span)) inDoubt.Add((site, "", ""));
            foreach (var (hall, hallMap) in InOrder(map.Map("halls"))) AddHall(site, hall, hallMap);
        }
        var routes = Routes();
        return new Building([.. halls], [.. racks], routes)
        {
            Pathways = [.. pathways],
            Sites = [.. sites],
            HasFaultyRoutes = hasRoutesInDoubt || tree.Items("routes").Any(map => findings.HasErrorIn(map.Span)),
        };
    }

    /// <summary>Whether a path to racks, without their numbers, leads into a site, hall or row that could not be read; what is missing
    /// there has been reported.</summary>
    public bool IsInDoubt(string[] path) => inDoubt.Exists(d => path.Length switch
    {
        2 => d.Hall.Length == 0 || (d.Hall == path[0] && (d.Row.Length == 0 || d.Row == path[1])),
        3 => d.Site == path[0] && (d.Hall.Length == 0 || (d.Hall == path[1] && (d.Row.Length == 0 || d.Row == path[2]))),
        _ => false,
    });

    private static IEnumerable<(string Name, MapNode Map)> InOrder(MapNode? names) =>
        (names?.Entries ?? [])
            .Where(e => e.Value is MapNode)
            .Select(e => (e.Key.Value, (MapNode)e.Value))
            .OrderBy(e => e.Value, NaturalOrder.Instance);

    private RackType TypeOf(string name, MapNode map)
    {
        var usual = RackType.Standard(standards);
        var type = new RackType(
            name,
            map.Whole("units") ?? usual.Units,
            map.Length("width") ?? usual.Width,
            map.Length("depth") ?? usual.Depth,
            map.Length("front-space") ?? usual.FrontSpace,
            map.Length("plinth") ?? usual.Plinth);
        return type with
        {
            WeightLimit = Weight(map, "weight-limit"),
            OwnWeight = Weight(map, "own-weight"),
            PowerLimit = map.Watts("power-limit"),
            DeviceDepth = map.Length("device-depth") ?? type.Depth - type.FrontSpace,
        };
    }

    private static Mass? Weight(MapNode map, string key) =>
        map.InUnits(key, UnitText.Masses) is { } kilograms ? Mass.FromKilograms(kilograms) : null;

    private void AddHall(string site, string name, MapNode map)
    {
        var exit = map.Map("exit");
        var isShared = tree.Entries("sites").Count(s => s.Map.Map("halls")?[name] is not null) > 1;
        var hall = new Hall(halls.Count, site, name, map.Length("pathway-height") ?? Hall.UsualPathwayHeight,
            Position(exit, "x"), Position(exit, "y"), map.Span)
        {
            IsNameShared = isShared,
            Altitude = map["altitude"] is null ? null : Position(map, "altitude"),
            Inlet = map.InUnits("inlet", UnitText.Temperatures) is { } celsius ? Temperature.FromCelsius(celsius) : null,
            AirClass = map.Text("air-class") ?? "",
            Cooling = map.Watts("cooling"),
            FloorLoad = map.InUnits("floor-load", UnitText.Pressures),
            Ceiling = map.Length("ceiling"),
            Exits = [.. InOrder(map.Map("exits")).Select(e => new HallExit(e.Name, Position(e.Map, "x"), Position(e.Map, "y")))],
        };
        halls.Add(hall);
        if (map.Map("rows") is null) inDoubt.Add((site, name, ""));
        foreach (var (row, rowMap) in InOrder(map.Map("rows"))) AddRow(hall, row, rowMap);
        foreach (var (pathway, pathwayMap) in InOrder(map.Map("pathways"))) AddPathway(hall, pathway, pathwayMap);
    }

    private void AddPathway(Hall hall, string name, MapNode map)
    {
        if (map.Length("width") is not { } width || map.Map("from") is not { } from || map.Map("to") is not { } to) return;
        var pathway = CrossSection(map, new Pathway(hall, name, Position(from, "x"), Position(from, "y"), Position(to, "x"),
            Position(to, "y"), width, width, false, map.Span))
            with
            {
                FromHeight = PositionOrNull(from, "height") ?? hall.PathwayHeight,
                ToHeight = PositionOrNull(to, "height") ?? hall.PathwayHeight,
            };
        if (map.Text("kind") == "riser" && !pathway.IsRiser)
        {
            findings.Add(ModelFindings.PathwayContradicts, map.SpanOf("kind"),
                $"'{name}' is a riser and its ends are not above one another; give both the same x and y, or make it a tray");
            return;
        }
        if (HasKeysOfAnotherKind(pathway, map)) return;
        if (pathway.Length.Metres <= 0)
        {
            findings.Add(ModelFindings.PathwayContradicts, map.Span,
                $"'{name}' ends where it begins; give its ends two places, or two heights for a riser");
            return;
        }
        pathways.Add(pathway);
    }

    /// <summary>What holds for a pathway in a hall and for a route alike.</summary>
    private static Pathway CrossSection(MapNode map, Pathway pathway)
    {
        var isDuct = map.Text("kind") == "duct";
        return pathway with
        {
            IsDuct = isDuct,
            Depth = isDuct ? pathway.Width : map.Length("depth") ?? Length.FromMillimetres(UsualTrayDepth),
            Side = map.Text("side") ?? "",
            LoadRating = map.InUnits("load-rating", UnitText.LineLoads),
            BendRadius = map.Length("bend-radius"),
            PullPoints = map.Whole("pull-points") ?? 0,
        };
    }

    private void AddRow(Hall hall, string row, MapNode map)
    {
        var typeName = map.Text("rack") ?? RackType.DefaultName;
        var type = Names.Require(types.GetValueOrDefault(typeName), "kind of rack", typeName, types.Keys, map.SpanOf("rack"), findings)
            ?? types[RackType.DefaultName];
        var x = Position(map, "x");
        RowSide? fronts = map.Text("fronts") switch { "near" => RowSide.Near, "far" => RowSide.Far, _ => null };
        if (map.Whole("racks") is null) inDoubt.Add((hall.Site, hall.Name, row));
        for (var i = 0; i < (map.Whole("racks") ?? 0); i++)
            racks.Add(new Rack(racks.Count, hall, row, i + 1, x + (type.Width * (i + 0.5)), Position(map, "y"), type) { Fronts = fronts });
    }

    private ImmutableArray<HallRoute> Routes()
    {
        var routes = ImmutableArray.CreateBuilder<HallRoute>();
        foreach (var map in tree.Items("routes"))
        {
            if (HallOf(map, "from") is not { } from || HallOf(map, "to") is not { } to || map.Length("length") is not { } length) continue;
            if (from == to)
            {
                findings.Add(ModelFindings.PathwayContradicts, map.SpanOf("to"),
                    $"the route begins and ends in {from.FullName}; name the other hall, or describe a tray or duct of the hall");
                continue;
            }
            if (ExitOf(map, "from-exit", from) is not { } near || ExitOf(map, "to-exit", to) is not { } far) continue;
            var route = new HallRoute(from, to, length, map.Whole("connections"), map.Whole("splices") ?? 0, map.Span)
            {
                Side = map.Text("side") ?? "",
                FromExit = near,
                ToExit = far,
            };
            route = route with { Name = NameOf(route, map, routes) };
            routes.Add(route);
            if (map.Length("width") is not { } width)
            {
                TellWithoutWidth(route, map);
                continue;
            }
            var pathway = CrossSection(map, new Pathway(from, route.Name, near.X, near.Y, far.X, far.Y, width, width, false, map.Span));
            if (HasKeysOfAnotherKind(pathway, map)) continue;
            pathways.Add(pathway with { Route = route });
        }
        return routes.ToImmutable();
    }

    /// <summary>Routes are told apart by their names: those without one, between halls that have several, are numbered.</summary>
    private string NameOf(HallRoute route, MapNode map, IReadOnlyCollection<HallRoute> before)
    {
        var stated = map.Text("name");
        var name = stated ?? route.Name;
        if (before.All(r => r.Name != name)) return name;
        if (stated is not null)
            findings.Add(ModelFindings.NameTaken, map.SpanOf("name"), $"another route is called '{name}'; give each a name of its own");
        var number = 2;
        while (before.Any(r => r.Name == Numbered())) number++;
        return Numbered();

        string Numbered() => $"{name} ({Numerals.Whole(number)})";
    }

    /// <summary>What holds for a cross-section is for nothing where none is stated.</summary>
    private void TellWithoutWidth(HallRoute route, MapNode map)
    {
        foreach (var key in OfCrossSection)
        {
            if (map[key] is null) continue;
            findings.Add(ModelFindings.PathwayContradicts, map.SpanOf(key),
                $"'{route.Name}' states '{key}' and no 'width', so nothing is held against it; state the width, or leave '{key}' out");
        }
    }

    private bool HasKeysOfAnotherKind(Pathway pathway, MapNode map)
    {
        if (!pathway.IsDuct && map["pull-points"] is not null)
        {
            findings.Add(ModelFindings.PathwayContradicts, map.SpanOf("pull-points"),
                $"'{pathway.Name}' is no duct, and cables are laid into it from above all along; leave 'pull-points' out, or write "
                + "'kind: duct'");
            return true;
        }
        if (!pathway.IsDuct || map["depth"] is null) return false;
        findings.Add(ModelFindings.PathwayContradicts, map.SpanOf("depth"),
            $"'{pathway.Name}' is a round duct, whose depth is its width; leave 'depth' out, or make it a tray");
        return true;
    }

    private static readonly ImmutableArray<string> OfCrossSection = ["kind", "depth", "load-rating", "bend-radius", "pull-points"];

    private HallExit? ExitOf(MapNode map, string key, Hall hall) => map.Text(key) is { } name
        ? Names.Require(
            hall.Exits.FirstOrDefault(e => e.Name == name), "exit", name, hall.Exits.Select(e => e.Name), map.SpanOf(key), findings)
        : hall.Exit;

    private Hall? HallOf(MapNode map, string key)
    {
        if (map.Text(key) is not { } name) return null;
        var found = halls.Where(h => h.Name == name || h.FullName == name).ToList();
        if (found.Count > 1)
        {
            findings.Add(ModelFindings.NameAmbiguous, map.SpanOf(key), $"several sites have a hall '{name}'; write it as site/hall");
            return null;
        }
        if (found.Count == 0 && inDoubt.Exists(d => d.Hall.Length == 0))
        {
            hasRoutesInDoubt = true;
            return null;
        }
        return Names.Require(found.FirstOrDefault(), "hall", name, halls.Select(h => h.Name), map.SpanOf(key), findings);
    }

    private static Length? PositionOrNull(MapNode map, string key) =>
        map.InUnits(key, UnitText.Lengths) is { } metres ? Length.FromMetres(metres) : null;

    private static Length Position(MapNode? map, string key) =>
        map?.InUnits(key, UnitText.Lengths) is { } metres ? Length.FromMetres(metres) : default;
}
