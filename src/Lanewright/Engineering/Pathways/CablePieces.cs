using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Model;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Pathways;

/// <summary>All that is laid between racks: cables, the cords on ways through trunks, and trunks. What several links share is one piece
/// for each two racks it joins: the legs of a fan-out go each to its own rack.</summary>
internal sealed class CablePieces
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly ImmutableArray<CablePiece>.Builder pieces;
    private readonly Dictionary<CableKey, int> pieceOf;
    private readonly Dictionary<(int Cable, int Joint, WayQuestion Question), int> shared = [];
    private readonly Dictionary<(int Cable, int Joint), int> bodies = [];

    private CablePieces(Plan plan, LinkDesign design, ImmutableArray<LineCord> cords)
    {
        (this.plan, this.design) = (plan, design);
        pieces = ImmutableArray.CreateBuilder<CablePiece>(design.Cables.Length);
        pieceOf = new(design.Cables.Length);
        for (var link = 0; link < plan.Links.Count; link++)
            if (design.CableOf(link) >= 0 && design.SolutionOf(link) is { } solution) AddLink(link, solution);
        foreach (var trunk in plan.Trunks)
            for (var number = 0; number < trunk.Count; number++)
                Add(new CableKey(CableKind.Trunk, trunk.Index, number), trunk.From, trunk.To, trunk.Cable, trunk.Side,
                    trunk.IsExisting, 1, -1);
        for (var i = 0; i < cords.Length; i++)
            if (cords[i] is { Cord: { } item, From.Device: >= 0 and var from, To.Device: >= 0 and var to })
                Add(new CableKey(CableKind.LineCord, i), from, to, item, "", isFixed: true, 1, -1);
        All = pieces.ToImmutable();
    }

    /// <summary>The pieces in the order of the links, then trunks, then cords of lines.</summary>
    public ImmutableArray<CablePiece> All { get; }

    /// <summary>The pieces of a design and of the lines beside it.</summary>
    public static CablePieces Of(Plan plan, LinkDesign design, ImmutableArray<LineCord> cords) => new(plan, design, cords);

    /// <summary>Number of the piece that something is, or lies in; -1 where it is not laid from rack to rack.</summary>
    public int Of(CableKey key) => pieceOf.GetValueOrDefault(key, -1);

    /// <summary>All that some pieces stand for: a cable and each link that shares it.</summary>
    public ILookup<CableKey, CableKey> KeysOf(IEnumerable<int> numbers)
    {
        var wanted = numbers.ToHashSet();
        return pieceOf.Where(p => wanted.Contains(p.Value)).ToLookup(p => All[p.Value].Key, p => p.Key);
    }

    private void AddLink(int link, Solution solution)
    {
        var statement = plan.Statements[plan.Links.Statement(link)];
        var (side, isFixed, cable) = (statement.Side, statement.IsExisting, design.CableOf(link));
        var (at, end) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        if (solution.Through is not { } way || solution.Patching.IsEmpty)
        {
            Add(Key(0), at, end, solution.Cable, side, isFixed, design.Cables[cable].Links, cable);
            return;
        }
        for (var joint = 0; joint < solution.Patching.Length; joint++)
        {
            var cord = solution.Patching[joint];
            var to = joint < way.Legs.Length ? way.Legs[joint].NearPanel : end;
            Add(Key(joint), at, to, cord.Cord, side, isFixed, cord.Links, cable);
            if (joint < way.Legs.Length) at = way.Legs[joint].FarPanel;
        }

        CableKey Key(int joint) => new(CableKind.Cable, link, joint);
    }

    private WayQuestion? QuestionOf(int from, int to, string side)
    {
        if (design.Lengths.Ways is not null) return design.Lengths.QuestionOf(from, to, side);
        // Without pathways there are no sides either.
        var (a, b) = (plan.Devices.RackIndex(from), plan.Devices.RackIndex(to));
        return a < 0 || b < 0 || a == b ? null : WayQuestion.Between(a, b, 0);
    }

    /// <summary>Links of one cable that go between the same racks lie in one piece.</summary>
    private void Add(CableKey key, int from, int to, CableItem item, string side, bool isFixed, int links, int cable)
    {
        if (QuestionOf(from, to, side) is not { } question) return;
        var sharing = (cable, key.Number, question);
        if (links > 1 && shared.TryGetValue(sharing, out var piece)) pieces[piece] = pieces[piece] with { Links = pieces[piece].Links + 1 };
        else
        {
            piece = pieces.Count;
            pieces.Add(new CablePiece(key, from, to, question, item, isFixed) { OfLinks = links, Body = links > 1 ? BodyOf(sharing) : -1 });
            if (links > 1) shared.Add(sharing, piece);
        }
        pieceOf[key] = piece;
    }

    private int BodyOf((int Cable, int Joint, WayQuestion Question) sharing)
    {
        if (!bodies.TryGetValue((sharing.Cable, sharing.Joint), out var body))
            bodies[(sharing.Cable, sharing.Joint)] = body = bodies.Count;
        return body;
    }
}
