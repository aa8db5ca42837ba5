using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Which way every cable of a design goes, and what lies in each stretch of every pathway.</summary>
public sealed class PathwayBook
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly CableLaying? laying;
    private readonly Dictionary<CableWay, ImmutableArray<Pathway>> pathwaysOf = new(ReferenceEqualityComparer.Instance);

    private readonly Dictionary<int, CableMove> moves = [];
    private readonly Lazy<PlantBook> plant;
    private readonly Lazy<ImmutableArray<DuctRun>> ductRuns;
    private readonly Lazy<ImmutableArray<ApartPair>> pairs;

    private PathwayBook(Plan plan, LinkDesign design, Lazy<PlantBook> plant)
    {
        this.plan = plan;
        this.design = design;
        this.plant = plant;
        laying = design.Laying;
        Fills = laying?.Fills ?? [];
        ductRuns = new(() => Net is { } net ? [.. DuctRun.Of(net)] : []);
        pairs = new(() => Net is { } net ? [.. Detours.Pairs, .. PatchedPairs.Of(plan, net, WaysOf)] : Detours.Pairs);
        foreach (var move in Detours.Moves)
            if (Piece(move.Key) is >= 0 and var piece) moves.TryAdd(piece, move);
    }

    /// <summary>The graph of pathways; null where the plan has none.</summary>
    public WayNet? Net => laying?.Net;

    /// <summary>Ducts in line that are pulled through at once.</summary>
    public ImmutableArray<DuctRun> DuctRuns => ductRuns.Value;

    /// <summary>Every stretch of every pathway, hall by hall.</summary>
    public ImmutableArray<SegmentFill> Fills { get; }

    /// <summary>All that is laid from rack to rack.</summary>
    public ImmutableArray<CablePiece> Pieces => laying?.Pieces ?? [];

    /// <summary>Cables that do not go the shortest way.</summary>
    public LaidDetours Detours => laying?.Detours ?? LaidDetours.None;

    /// <summary>Pairs of links that are kept apart, or were to be, those through panels among them.</summary>
    public ImmutableArray<ApartPair> Pairs => pairs.Value;

    /// <summary>The ways of a design.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="plant">Which trunks its links are patched through.</param>
    public static PathwayBook Of(Plan plan, LinkDesign design, Lazy<PlantBook> plant) => new(plan, design, plant);

    /// <summary>The way of a piece by its number; null where none leads there.</summary>
    public CableWay? WayOf(int piece) => laying?.WayOf(piece);

    /// <summary>The pathway that cables of a rack come down from; null where its hall has none.</summary>
    public Pathway? OverRack(Rack rack) => Net?.Over(rack);

    /// <summary>The pathways that the cable of a link lies in, each once; of a link through trunks those of its cords and of the trunks
    /// it is patched through.</summary>
    public ImmutableArray<Pathway> PathwaysOf(int link)
    {
        var ways = WaysOf(link).ToList();
        return ways.Count == 1 ? PathwaysOf(ways[0]) : [.. ways.SelectMany(w => PathwaysOf(w)).Distinct()];
    }

    /// <summary>The pathways that the cable of a link goes through from its first end to its second, in order, each once in a row; empty
    /// where there are none.</summary>
    public IEnumerable<string> Through(int link) => Through(new CableKey(CableKind.Cable, link));

    /// <summary>The same of anything that is laid.</summary>
    public IEnumerable<string> Through(CableKey key)
    {
        var piece = Piece(key);
        return piece < 0 || WayOf(piece) is not { } way ? [] : Names(way, Pieces[piece].FromDevice, Pieces[piece].ToDevice);
    }

    /// <summary>The stretches that something lies in; none where it is not laid along pathways.</summary>
    public IEnumerable<int> StretchesOf(CableKey key) => Piece(key) is >= 0 and var piece && WayOf(piece) is { } way ? way.Stretches : [];

    /// <summary>The pathway that had no room for something that is laid, by its full name; empty where it lies on its shortest
    /// way.</summary>
    public string MovedOff(CableKey key) =>
        Piece(key) is >= 0 and var piece && moves.TryGetValue(piece, out var move) ? Fills[move.Full].Pathway.FullName : "";

    /// <summary>The pathways of a way in order from one device to another, each once in a row; where it leads through further halls with
    /// every route.</summary>
    public IEnumerable<string> Names(CableWay way, int from, int to)
    {
        var last = "";
        foreach (var name in NamesInOrder(way, from, to))
        {
            if (name != last) yield return name;
            last = name;
        }
    }

    /// <summary>Which cables lie in which pathway, each kind once.</summary>
    public IEnumerable<(Pathway Pathway, CableItem Cable)> CablesByPathway()
    {
        var seen = new HashSet<(CableWay, string)>();
        var found = new HashSet<(Pathway, string)>();
        for (var i = 0; i < Pieces.Length; i++)
        {
            if (WayOf(i) is not { } way || !seen.Add((way, Pieces[i].Item.Name))) continue;
            foreach (var pathway in PathwaysOf(way))
                if (found.Add((pathway, Pieces[i].Item.Name))) yield return (pathway, Pieces[i].Item);
        }
    }

    /// <summary>What lies in a stretch: each kind of cable with its number, the thickest first; legs of one cable are one.</summary>
    public ImmutableArray<(CableItem Cable, int Count)> Contents(int stretch) =>
    [
        .. Enumerable.Range(0, Pieces.Length)
            .Where(i => WayOf(i)?.Stretches.Contains(stretch) == true)
            .GroupBy(i => Pieces[i].Item.Name, StringComparer.Ordinal)
            .Select(g => (Pieces[g.First()].Item, g.Select(i => Pieces[i].Body is >= 0 and var body ? ~body : i).Distinct().Count()))
            .OrderByDescending(c => c.Item.Diameter).ThenBy(c => c.Item.Name, StringComparer.Ordinal),
    ];

    /// <summary>The routes between halls that the cable of a link goes through, each once; of a link through trunks those of its cords
    /// and trunks.</summary>
    public IEnumerable<HallRoute> RoutesOf(int link) => WaysOf(link).SelectMany(w => w.Routes).Distinct();

    /// <summary>What moved the cable of a link, or a cord of it, off its shortest way; null where nothing did.</summary>
    public CableMove? MoveOf(int link)
    {
        if (moves.Count == 0) return null;
        foreach (var piece in CordsOf(link))
            if (moves.TryGetValue(piece, out var move)) return move;
        return null;
    }

    /// <summary>How long the cable of a link, or the cord at its first end, has to be; null when it cannot be told.</summary>
    public Length? LengthOf(int link) => PartsOf(link)?.Total;

    /// <summary>The same, part by part.</summary>
    public RouteParts? PartsOf(int link)
    {
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        var end = design.SolutionOf(link)?.Through?.NearPanel ?? to;
        return Detours.Ways.TryGetValue(new CableKey(CableKind.Cable, link), out var way)
            ? design.Lengths.Along(way, from, end)
            : design.Lengths.Parts(from, end, plan.Statements[plan.Links.Statement(link)].Side);
    }

    /// <summary>The pathways that the cable of a link goes through, in order, each once in a row, with how far it lies in it.</summary>
    public ImmutableArray<(Pathway Pathway, Length Length)> Stretches(int link)
    {
        var found = ImmutableArray.CreateBuilder<(Pathway Pathway, Length Length)>();
        var piece = Piece(new CableKey(CableKind.Cable, link));
        if (piece < 0 || WayOf(piece) is not { } way) return [];
        foreach (var stretch in InOrder(way, Pieces[piece].FromDevice, Pieces[piece].ToDevice))
        {
            var (pathway, length) = (Fills[stretch].Pathway, Length.FromMetres(Fills[stretch].Stretch.Metres));
            if (found.Count > 0 && found[^1].Pathway == pathway) found[^1] = (pathway, found[^1].Length + length);
            else found.Add((pathway, length));
        }
        return found.ToImmutable();
    }

    private IEnumerable<string> NamesInOrder(CableWay way, int from, int to)
    {
        var isWritten = IsWrittenFrom(from, to);
        if (Net is not { } net || way.Routes.Length < 2 || plan.Devices.Rack(isWritten ? from : to) is not { } rack)
            return InOrder(way, from, to).Select(s => Fills[s].Pathway.FullName);
        var names = WayNames.Of(net, way, rack.Hall);
        return isWritten ? names : names.Reverse();
    }

    /// <summary>Ways are written from the rack of the lower number.</summary>
    private bool IsWrittenFrom(int from, int to) => plan.Devices.RackIndex(from) < plan.Devices.RackIndex(to);

    private IEnumerable<int> InOrder(CableWay way, int from, int to) =>
        IsWrittenFrom(from, to) ? way.Stretches : way.Stretches.Reverse();

    /// <summary>All that the light of a link goes through from rack to rack, by number: its cable or its cords, and the trunks it is
    /// patched through.</summary>
    public IEnumerable<int> PiecesOf(int link) => CordsOf(link).Concat(TrunksOf(link));

    /// <summary>Cables in a stretch that stay where they are: they lie there already, or were ordered for their way.</summary>
    public int FixedIn(int stretch) =>
        Enumerable.Range(0, Pieces.Length).Count(i => Pieces[i].IsFixed && WayOf(i)?.Stretches.Contains(stretch) == true);

    private IEnumerable<CableWay> WaysOf(int link) =>
        PiecesOf(link).Select(WayOf).OfType<CableWay>();

    /// <summary>The pieces a link has of its own or shares with others of its cable.</summary>
    private IEnumerable<int> CordsOf(int link)
    {
        var cords = Math.Max(1, design.SolutionOf(link)?.Patching.Length ?? 0);
        for (var joint = 0; joint < cords; joint++)
            if (Piece(new CableKey(CableKind.Cable, link, joint)) is >= 0 and var piece) yield return piece;
    }

    private IEnumerable<int> TrunksOf(int link)
    {
        if (plan.Trunks.IsEmpty) yield break;
        foreach (var patch in plant.Value.PatchesOf(link))
            if (Piece(new CableKey(CableKind.Trunk, patch.Trunk.Index, patch.Number - 1)) is >= 0 and var piece) yield return piece;
    }

    private int Piece(CableKey key) => laying?.PieceOf(key) ?? -1;

    private ImmutableArray<Pathway> PathwaysOf(CableWay way)
    {
        if (pathwaysOf.TryGetValue(way, out var found)) return found;
        return pathwaysOf[way] = [.. way.Stretches.Select(s => Fills[s].Pathway).Distinct()];
    }
}
