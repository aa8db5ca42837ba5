using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>Finds an order of rows alike, with a bound beside it where the search was too long for a proof. Trays stay where they
/// are, and everything in a row moves with it.</summary>
internal sealed class RowPlacer
{
    /// <summary>Rows that are looked at together: a table of the fourth power of their number is kept.</summary>
    private const int MostRows = 24;

    private readonly Plan plan;
    private readonly PlacementCost cost;
    private readonly ImmutableArray<ImmutableArray<Rack>> rows;
    private readonly Dictionary<int, (int Row, int Number)> placeOf = [];

    /// <summary>Cost of the links between two rows, or of one row with all that stays, by the places both stand at.</summary>
    private readonly double[,,,] between;
    private readonly double[,] alone;

    private RowPlacer(Plan plan, PlacementCost cost, ImmutableArray<ImmutableArray<Rack>> rows)
    {
        (this.plan, this.cost, this.rows) = (plan, cost, rows);
        for (var r = 0; r < rows.Length; r++)
            for (var n = 0; n < rows[r].Length; n++)
                placeOf[rows[r][n].Index] = (r, n);
        var count = rows.Length;
        between = new double[count, count, count, count];
        alone = new double[count, count];
        Fill();
    }

    /// <summary>The best order of each set of rows alike in each hall that has more than one; sets of too many rows are left as they
    /// stand.</summary>
    public static IEnumerable<RowOrder> Find(Plan plan, PlacementCost cost)
    {
        foreach (var hall in plan.Building.Halls)
        {
            var alike = plan.Building.Racks.Where(r => r.Hall == hall)
                .GroupBy(r => r.Row).Select(g => g.OrderBy(r => r.Number).ToImmutableArray())
                .GroupBy(r => (r.Length, r[0].Type));
            foreach (var rows in alike)
                if (rows.Count() > MostRows) yield return RowOrder.NotLookedAt(hall.Index, [.. rows.Select(r => r[0].Row)]);
                else if (rows.Count() > 1) yield return new RowPlacer(plan, cost, [.. rows]).Find(hall.Index);
        }
    }

    private RowOrder Find(int hall)
    {
        int[] now = [.. Enumerable.Range(0, rows.Length)];
        var (places, best, noLessThan) = QuadraticAssignment.Solve(alone, between, now);
        var names = rows.Select(r => r[0].Row).ToImmutableArray();
        var held = QuadraticAssignment.Cost(alone, between, now);
        var detours = cost.Detours(Enumerable.Range(0, plan.Devices.Count).Where(d => placeOf.ContainsKey(plan.Devices.RackIndex(d))));
        return new RowOrder(
            hall, names, [.. Inverse(places).Select(r => names[r])], held + detours, best + detours, noLessThan)
        {
            Detours = detours,
        };
    }

    /// <summary>Every link once, at every pair of places its rows could stand at.</summary>
    private void Fill()
    {
        var seen = new HashSet<int>();
        for (var device = 0; device < plan.Devices.Count; device++)
        {
            if (!placeOf.TryGetValue(plan.Devices.RackIndex(device), out var own)) continue;
            foreach (var link in cost.LinksOf(device))
            {
                if (!seen.Add(link)) continue;
                var far = cost.Far(link, device);
                if (placeOf.TryGetValue(plan.Devices.RackIndex(far), out var other)) Add(link, device, own, far, other);
                else if (cost.Now(far) is { } there)
                    for (var p = 0; p < rows.Length; p++)
                        alone[own.Row, p] += cost.Between(link, device, At(device, p, own.Number), far, there);
            }
        }
    }

    private void Add(int link, int device, (int Row, int Number) own, int far, (int Row, int Number) other)
    {
        for (var p = 0; p < rows.Length; p++)
        {
            if (own.Row == other.Row)
            {
                alone[own.Row, p] += cost.Between(link, device, At(device, p, own.Number), far, At(far, p, other.Number));
                continue;
            }
            for (var q = 0; q < rows.Length; q++)
                if (p != q)
                    between[own.Row, p, other.Row, q] +=
                        cost.Between(link, device, At(device, p, own.Number), far, At(far, q, other.Number));
        }
    }

    private PlacedAt At(int device, int place, int number) => new(rows[place][number], plan.Devices.Unit(device));

    private static int[] Inverse(int[] places)
    {
        var rows = new int[places.Length];
        for (var r = 0; r < places.Length; r++) rows[places[r]] = r;
        return rows;
    }
}
