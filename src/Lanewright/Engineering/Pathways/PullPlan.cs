using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>In what bundles and in what order cables are pulled: those that go farthest first, so that they lie lowest and what leaves the
/// tray earlier leaves from the top.</summary>
public sealed class PullPlan
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly PathwayBook book;
    private readonly Lazy<PlantBook> plant;

    private PullPlan(Plan plan, LinkDesign design, PathwayBook book, Lazy<PlantBook> plant)
    {
        (this.plan, this.design, this.book, this.plant) = (plan, design, book, plant);
        Bundles = [.. InOrder()];
    }

    /// <summary>The bundles in the order of pulling.</summary>
    public ImmutableArray<PullBundle> Bundles { get; }

    /// <summary>The pull plan of a design; without pathways there is none.</summary>
    public static PullPlan Of(Plan plan, LinkDesign design, PathwayBook book, Lazy<PlantBook> plant) => new(plan, design, book, plant);

    private IEnumerable<PullBundle> InOrder()
    {
        var most = (int)plan.Standards.Facility("bundle", "most-cables").Value;
        var groups = Enumerable.Range(0, book.Pieces.Length)
            .Where(i => book.Pieces[i].IsPulled)
            .SelectMany(i => book.WayOf(i) is { } way ? [(Piece: i, Way: way)] : Array.Empty<(int Piece, CableWay Way)>())
            .GroupBy(p => (p.Way, book.Pieces[p.Piece].Question, book.Pieces[p.Piece].Item), p => p.Piece)
            .OrderByDescending(g => Math.Round(g.Key.Way.Total, Decimals))
            .ThenByDescending(g => g.Key.Item.Diameter)
            .ThenByDescending(g => g.Count())
            .ThenBy(g => g.First());
        var routes = new Dictionary<(CableWay, int, int), int>();
        var (order, before) = (0, default((double Total, int Route)?));
        foreach (var group in groups)
        {
            var key = (group.Key.Way, group.Key.Question.From, group.Key.Question.To);
            if (!routes.TryGetValue(key, out var route)) routes[key] = route = routes.Count + 1;
            var total = Math.Round(group.Key.Way.Total, Decimals);
            foreach (var pieces in group.Chunk(most))
            {
                var reason = before is not { } last ? PullReason.Longest
                    : last.Route == route ? PullReason.SameRoute
                    : total < last.Total ? PullReason.Shorter
                    : PullReason.Thickest;
                before = (total, route);
                yield return Bundle(++order, route, group.Key.Way, pieces, reason);
            }
        }
    }

    private PullBundle Bundle(int order, int route, CableWay way, int[] pieces, PullReason reason)
    {
        var first = book.Pieces[pieces[0]];
        var (from, to) = (plan.Devices.RackIndex(first.FromDevice), plan.Devices.RackIndex(first.ToDevice));
        var packing = plan.Standards.Facility("bundle", "packing").Value;
        var weight = CableWeight.AMetreOf(first.Item, plan.Standards);
        var lengths = pieces.Select(p => Ordered(book.Pieces[p].Key)).ToList();
        // Legs of one cable that part weigh their share of it each.
        var metres = pieces.Zip(lengths, (p, l) => l.Metres * book.Pieces[p].Links / book.Pieces[p].OfLinks).Sum();
        var fibres = pieces.Select(p => FibresOf(book.Pieces[p])).ToList();
        return new PullBundle(order, route, from, to, first.Item, [.. pieces.Select(p => book.Pieces[p].Key)], way,
            [.. book.Names(way, first.FromDevice, first.ToDevice)],
            Length.FromMetres(lengths.Max(l => l.Metres)), BundleSize.Of(first.Item.Diameter, pieces.Length, packing),
            metres * (weight?.Value ?? 0), weight?.Source.Mark ?? Mark.Seen, fibres.Sum(f => f.All),
            fibres.Sum(f => f.All - f.Lit), reason);
    }

    private Length Ordered(CableKey key)
    {
        if (key.Kind == CableKind.Trunk) return design.Trunks.Of(plan.Trunks[key.Index], key.Number) ?? default;
        if (key.Kind == CableKind.LineCord) return book.LineCord(key).Ordered ?? default;
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

    private const int Decimals = 6;
}
