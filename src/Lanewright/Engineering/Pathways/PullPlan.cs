using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>In what bundles and in what order cables are pulled: those that go farthest first, so that they lie lowest and what leaves the
/// tray earlier leaves from the top. What no pathway leads comes after what lies in pathways.</summary>
public sealed class PullPlan
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly PathwayBook book;
    private readonly Lazy<PlantBook> plant;
    private readonly ImmutableArray<LineCord> cords;
    private readonly ImmutableArray<CablePiece> pieces;

    private PullPlan(Plan plan, LinkDesign design, PathwayBook book, Lazy<PlantBook> plant, ImmutableArray<LineCord> cords)
    {
        (this.plan, this.design, this.book, this.plant, this.cords) = (plan, design, book, plant, cords);
        pieces = book.Net is null ? CablePieces.Of(plan, design, cords).All : book.Pieces;
        Bundles = [.. InOrder()];
    }

    /// <summary>The bundles in the order of pulling.</summary>
    public ImmutableArray<PullBundle> Bundles { get; }

    /// <summary>The pull plan of a design.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="book">Which ways cables go.</param>
    /// <param name="plant">What trunks carry.</param>
    /// <param name="cords">Cords of lines.</param>
    public static PullPlan Of(
        Plan plan, LinkDesign design, PathwayBook book, Lazy<PlantBook> plant, ImmutableArray<LineCord> cords) =>
        new(plan, design, book, plant, cords);

    private IEnumerable<PullBundle> InOrder()
    {
        var most = (int)plan.Standards.Facility("bundle", "most-cables").Value;
        var groups = Enumerable.Range(0, pieces.Length)
            .Where(i => pieces[i].IsPulled)
            .GroupBy(i => (Way: book.Net is null ? null : book.WayOf(i), pieces[i].Question.From, pieces[i].Question.To, pieces[i].Item))
            .Select(g => (g.Key.Way, g.Key.From, g.Key.To, g.Key.Item, Distance: DistanceOf(g.Key.Way, pieces[g.First()]),
                Pieces: g.ToArray()))
            .OrderBy(g => g.Way is null)
            .ThenByDescending(g => g.Distance)
            .ThenByDescending(g => g.Item.Diameter)
            .ThenByDescending(g => g.Pieces.Length)
            .ThenBy(g => g.Pieces[0]);
        var routes = new Dictionary<(CableWay?, int, int), int>();
        var (order, before) = (0, default((Length? Distance, int Route)?));
        foreach (var (way, from, to, _, distance, all) in groups)
        {
            var key = (way, from, to);
            if (!routes.TryGetValue(key, out var route)) routes[key] = route = routes.Count + 1;
            foreach (var together in all.Chunk(most))
            {
                var reason = before is { } last && last.Route == route ? PullReason.SameRoute
                    : way is null ? PullReason.Open
                    : before is null ? PullReason.Longest
                    : distance < before.Value.Distance ? PullReason.Shorter
                    : PullReason.Thickest;
                before = (distance, route);
                yield return Bundle(++order, route, way, distance, together, reason);
            }
        }
    }

    /// <summary>How far a cable goes without what goes up and down at its racks, as documents print it: what reads alike is
    /// alike.</summary>
    private Length? DistanceOf(CableWay? way, CablePiece piece)
    {
        if (way is not null) return Printed(way.Total);
        return design.Lengths.Parts(piece.FromDevice, piece.ToDevice) is { } parts
            ? Printed((parts.Across + parts.Surveyed).Metres)
            : null;

        static Length Printed(double metres) => Length.FromMetres(Math.Round(metres, Decimals));
    }

    private PullBundle Bundle(int order, int route, CableWay? way, Length? distance, int[] together, PullReason reason)
    {
        var first = pieces[together[0]];
        var (from, to) = (plan.Devices.RackIndex(first.FromDevice), plan.Devices.RackIndex(first.ToDevice));
        var packing = plan.Standards.Facility("bundle", "packing").Value;
        var weight = CableWeight.AMetreOf(first.Item, plan.Standards);
        var lengths = together.Select(p => Ordered(pieces[p].Key)).ToList();
        // Legs of one cable that part weigh their share of it each.
        var metres = together.Zip(lengths, (p, l) => l.Metres * pieces[p].Links / pieces[p].OfLinks).Sum();
        var fibres = together.Select(p => FibresOf(pieces[p])).ToList();
        return new PullBundle(order, route, from, to, first.Item, [.. together.Select(p => pieces[p].Key)], way, distance,
            way is null ? [] : [.. book.Names(way, first.FromDevice, first.ToDevice)],
            Length.FromMetres(lengths.Max(l => l.Metres)), BundleSize.Of(first.Item.Diameter, together.Length, packing),
            metres * (weight?.Value ?? 0), weight?.Source.Mark ?? Mark.Seen, fibres.Sum(f => f.All),
            fibres.Sum(f => f.All - f.Lit), reason);
    }

    private Length Ordered(CableKey key)
    {
        if (key.Kind == CableKind.Trunk) return design.Trunks.Of(plan.Trunks[key.Index], key.Number) ?? default;
        if (key.Kind == CableKind.LineCord) return cords[key.Index].Ordered ?? default;
        if (design.SolutionOf(key.Index) is not { } solution) return default;
        return solution.Patching.IsEmpty ? solution.Length : solution.Patching[key.Number].Length;
    }

    /// <summary>Fibres of a cable and how many carry light; those of trunks are told by the table of trunks.</summary>
    private (int All, int Lit) FibresOf(CablePiece piece)
    {
        if (piece.Item is not CordModel { IsTwistedPair: false } cord) return (0, 0);
        if (piece.Key.Kind == CableKind.Trunk)
            return (plan.Trunks[piece.Key.Index].Fibres, plant.Value.Trunks[piece.Key.Index].LitEach[piece.Key.Number]);
        var all = cord.Fibres ?? Positions(cord.Near);
        if (piece.Key.Kind == CableKind.LineCord) return (all, all);
        if (design.SolutionOf(piece.Key.Index)?.FromApplication?.Optical is not { } optical) return (all, all);
        // Legs of a fan-out that go a way of their own have their own fibres and no dark ones.
        if (piece.Links < piece.OfLinks) all = Math.Min(all, optical.Fibres * piece.Links);
        return (all, Math.Min(all, optical.Fibres * cord.Legs));
    }

    private int Positions(string connector) => (int)(plan.Standards.Connector(connector)?.Real("positions")?.Value ?? 2);

    private const int Decimals = 2;
}
