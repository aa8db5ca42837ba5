using System.Collections.Immutable;
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
        var floors = Floors(rows);
        if (!incumbent.CouldWin(upper + floors.Sum(f => f.Min(p => p.Cost)))) return;
        // A good design first: then few rows are left whose exact price matters.
        var first = new LeafChooser(context, build, count * planes).Choose(rows, floors);
        if (!incumbent.CouldWin(upper + first.Bound)) return;
        if (first.Chosen is null)
        {
            // The solver ran out of time: what it has not ruled out counts for the bound.
            incumbent.Skip(upper + first.Bound);
            return;
        }
        incumbent.Offer(DesignOf(first.Chosen), BoundOf(first.Chosen, upper));
        if (!context.Demand.Free.IsEmpty)
        {
            // What exists already is shared by all kinds, so that no kind has a price of its own.
            incumbent.Skip(upper + first.Bound);
            return;
        }
        TryApart(rows, upper);
        // Racks of leaves apart are shared by all kinds as well; above their hosts each kind has a price of its own.
        ImmutableArray<List<LeafRow>> above = [.. rows.Select(r => r.Where(l => !l.Config.IsApart).ToList())];
        if (above.All(r => r.Count > 0)) TryAbove([.. above], upper);
    }

    /// <summary>The best choices with leaves of a kind in racks of their own, by their lower bounds.</summary>
    private void TryApart(List<LeafRow>[] rows, double upper)
    {
        for (var kind = 0; kind < rows.Length; kind++)
        {
            var apart = rows.Select((r, k) => k == kind ? r.Where(l => l.Config.IsApart).ToList() : r).ToArray();
            if (apart[kind].Count == 0) continue;
            var found = new LeafChooser(context, build, count * planes).Choose(apart, Floors(apart));
            if (!incumbent.CouldWin(upper + found.Bound)) continue;
            if (found.Chosen is not null) incumbent.Offer(DesignOf(found.Chosen), BoundOf(found.Chosen, upper));
            incumbent.Skip(upper + found.Bound);
        }
    }

    /// <summary>What a choice costs at the least however its upper switches stand: its leaves in their places, with uplinks as short as
    /// those allow.</summary>
    private double BoundOf(LeafRow[] chosen, double upper) => upper + chosen
        .Select((row, kind) => context.InPlace(kind, row, shape, incumbent).Least + context.UplinkSurplus(kind, row, row.Parallel * count))
        .Sum();

    private static PartPrice[][] Floors(List<LeafRow>[] rows) =>
        [.. rows.Select(r => r.Select(l => new PartPrice(l.Least, l.Watts)).ToArray())];

    private void TryAbove(List<LeafRow>[] rows, double upper)
    {
        var left = Left(rows, upper);
        // Links to hosts are priced in their places, then uplinks by the racks of their leaves: that rules most rows out.
        for (var kind = 0; kind < left.Length; kind++)
            left[kind] = [.. left[kind].Select(r => context.InPlace(kind, r, shape, incumbent))];
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
        if (!incumbent.MayPriceParts(left.Sum(r => r.Count)))
        {
            incumbent.Skip(bound);
            return;
        }
        Finish(left, left.Select((r, kind) => r.Select(l => PriceOf(kind, l, upper)).ToArray()).ToArray(), upper);
    }

    /// <summary>Rows that could be part of a better design.</summary>
    private List<LeafRow>[] Left(List<LeafRow>[] rows, double upper)
    {
        var least = rows.Select(r => r.Count == 0 ? double.PositiveInfinity : r.Min(l => l.Least)).ToArray();
        var leastWatts = rows.Select(r => r.Count == 0 ? 0 : r.Min(l => l.Watts)).ToArray();
        var watts = context.Demand.WattsLeft - (build.Maximum * count * planes);
        return
        [
            .. rows.Select((r, kind) => r
                .Where(l => l.Watts + leastWatts.Where((_, k) => k != kind).Sum() <= watts
                    && incumbent.CouldWin(upper + l.Least + least.Where((_, k) => k != kind).Sum()))
                .ToList()),
        ];
    }

    private void Finish(List<LeafRow>[] rows, PartPrice[][] prices, double upper)
    {
        var chooser = new LeafChooser(context, build, count * planes);
        for (var tried = 0; tried < MostTried; tried++)
        {
            var best = chooser.Choose(rows, prices);
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
        incumbent.Skip(upper + chooser.Choose(rows, prices).Bound);
    }

    /// <summary>What the leaves of a kind take with all their links, in their places.</summary>
    private PartPrice PriceOf(int kind, LeafRow row, double upper)
    {
        var design = DesignOf([.. context.Demand.Hosts.Select(_ => row)]) with { OnlyKind = kind };
        // One hundredth for what rounding of each part may add up to.
        return context.Pricer.Price(design, out _) is { } priced
            ? new PartPrice((double)priced.Total.Hundredths - upper - 1, priced.End.MostWatts - (build.Maximum * count * planes))
            : PartPrice.None;
    }

    private FabricDesign DesignOf(LeafRow[] rows) => new()
    {
        Shape = shape,
        Planes = planes,
        Leaves = [.. rows.Select(r => r.Choice)],
        Upper = new UpperChoice(build, count, [.. rows.Select(r => r.UpperPorts)]),
    };
}
