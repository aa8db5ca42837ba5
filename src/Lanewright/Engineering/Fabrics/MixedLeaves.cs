using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Chooses a leaf for each of several kinds of host under one upper tier. What a kind costs does not depend on the leaves of the
/// others; ports of the upper switches and rack units are what they share.</summary>
internal sealed class MixedLeaves(
    SearchContext context, FabricShape shape, int planes, SwitchBuild build, int count, Incumbent incumbent)
{
    /// <summary>Choices that are tried when a limit rules out the best one only after it is priced.</summary>
    private const int MostTried = 12;

    /// <summary>So many rows are priced in any case.</summary>
    private const int FewRows = 60;

    /// <summary>A gap that is not worth pricing every leaf in its place under every upper tier.</summary>
    private const double Tolerance = 0.005;

    /// <summary>Offers the best choices.</summary>
    /// <param name="rows">Leaves of each kind with their lower bounds.</param>
    /// <param name="upper">Hundredths the upper tier costs.</param>
    public void Try(List<LeafRow>[] rows, double upper)
    {
        var floors = rows.Select(r => r.Select(l => l.Least).ToArray()).ToArray();
        if (!incumbent.CouldWin(upper + floors.Sum(f => f.Min()))) return;
        // A good design first: then few rows are left whose exact price matters.
        var first = new LeafChooser(context, build, count * planes).Choose(rows, floors);
        if (!incumbent.CouldWin(upper + first.Bound)) return;
        if (first.Chosen is null)
        {
            // The solver ran out of time: what it has not ruled out counts for the bound.
            incumbent.Skip(upper + first.Bound);
            return;
        }
        incumbent.Offer(DesignOf(first.Chosen), upper + first.Bound);
        var hasApart = rows.Select((r, kind) => r.Exists(l => context.Demand.StandsApart(kind, l.Config.Build))).Any(a => a);
        if (hasApart || !context.Demand.Free.IsEmpty)
        {
            // What exists already, and racks of leaves, are shared by all kinds, so that no kind has a price of its own.
            incumbent.Skip(upper + first.Bound);
            return;
        }
        var left = Left(rows, upper);
        // Links to hosts are priced in their places, then uplinks by the racks of their leaves: that rules most rows out.
        for (var kind = 0; kind < left.Length; kind++)
            left[kind] = [.. left[kind].Select(r => r with { Least = r.Least + context.LeafSurplus(kind, r, shape, incumbent) })];
        left = Left(left, upper);
        for (var kind = 0; kind < left.Length; kind++)
            left[kind] = [.. left[kind].Select(r => r with { Least = r.Least + context.UplinkSurplus(kind, r, r.Parallel * count) })];
        left = Left(left, upper);
        if (left.Any(r => r.Count == 0)) return;
        var bound = upper + left.Sum(r => r.Min(l => l.Least));
        if (bound > incumbent.Cost * (1 - Tolerance) && left.Sum(r => r.Count) > FewRows)
        {
            incumbent.Skip(bound);
            return;
        }
        Finish(left, left.Select((r, kind) => r.Select(l => CostOf(kind, l, upper)).ToArray()).ToArray(), upper);
    }

    /// <summary>Rows that could be part of a better design.</summary>
    private List<LeafRow>[] Left(List<LeafRow>[] rows, double upper)
    {
        var least = rows.Select(r => r.Count == 0 ? double.PositiveInfinity : r.Min(l => l.Least)).ToArray();
        return
        [
            .. rows.Select((r, kind) => r
                .Where(l => incumbent.CouldWin(upper + l.Least + least.Where((_, k) => k != kind).Sum()))
                .ToList()),
        ];
    }

    private void Finish(List<LeafRow>[] rows, double[][] costs, double upper)
    {
        var chooser = new LeafChooser(context, build, count * planes);
        for (var tried = 0; tried < MostTried; tried++)
        {
            var best = chooser.Choose(rows, costs);
            if (!incumbent.CouldWin(upper + best.Bound)) return;
            if (best.Chosen is null) break;
            var before = incumbent.Cost;
            incumbent.Offer(DesignOf(best.Chosen), upper + best.Bound);
            if (incumbent.Cost < before)
            {
                incumbent.Skip(upper + best.Bound);
                return;
            }
            chooser.Forbid(best.Chosen);
        }
        incumbent.Skip(upper + chooser.Choose(rows, costs).Bound);
    }

    /// <summary>What the leaves of a kind cost with all their links, in their places; infinite when they do not fit.</summary>
    private double CostOf(int kind, LeafRow row, double upper)
    {
        var design = DesignOf([.. context.Demand.Hosts.Select(_ => row)]) with { OnlyKind = kind };
        // One hundredth for what rounding of each part may add up to.
        return context.Pricer.Price(design, out _) is { } priced
            ? (double)priced.Total.Hundredths - upper - 1
            : double.PositiveInfinity;
    }

    private FabricDesign DesignOf(LeafRow[] rows) => new()
    {
        Shape = shape,
        Planes = planes,
        Leaves = [.. rows.Select(r => r.Choice)],
        Upper = new UpperChoice(build, count, [.. rows.Select(r => r.UpperPorts)]),
    };
}
