using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>The stages of a long line as there is room for them: the first spans and the last ones, and between them one gap for all
/// others.</summary>
/// <param name="Stages">The stages that are drawn; the one at the gap ends it.</param>
/// <param name="Gap">Which stage ends the gap; -1 without one.</param>
/// <param name="Words">What the gap stands for.</param>
internal sealed record FoldedStages(ImmutableArray<LineStage> Stages, int Gap, string Words)
{
    private const int First = 2;
    private const int Last = 2;

    /// <summary>Folds a line with more stages than there is room for.</summary>
    public static FoldedStages Of(ImmutableArray<LineStage> all, int most)
    {
        var told = all;
        if (all.Length > most) all = Joined(all);
        var spans = Enumerable.Range(1, Math.Max(0, all.Length - 1)).Where(i => all[i].At > all[i - 1].At).ToList();
        if (all.Length <= most || spans.Count <= First + Last + 1) return new FoldedStages(all, -1, "");
        // From the amplifier behind the last of the first spans to the one before the first of the last.
        var (from, to) = (spans[First] - 1, spans[^Last] - 1);
        // Those that were put together above count as they are.
        var left = Enumerable.Range(1, told.Length - 1).Count(i => told[i].At > told[i - 1].At && told[i].At > all[from].At
            && told[i].At <= all[to].At);
        var far = LineSheet.Of((all[to].At - all[from].At).Kilometres, "km");
        var words = $"{Numerals.Whole(left)} more spans, {far}";
        return new FoldedStages([.. all[..(from + 1)], all[to], .. all[(to + 1)..]], from + 1, words);
    }

    /// <summary>Spans that light passes one after the other without anything between as one.</summary>
    private static ImmutableArray<LineStage> Joined(ImmutableArray<LineStage> all)
    {
        var joined = ImmutableArray.CreateBuilder<LineStage>();
        var first = "";
        for (var i = 0; i < all.Length; i++)
        {
            if (!IsSpan(i)) first = "";
            else if (IsSpan(i + 1))
            {
                if (first.Length == 0) first = all[i].What;
                continue;
            }
            joined.Add(first.Length > 0 ? all[i] with { What = $"{first} to {all[i].What}" } : all[i]);
            first = "";
        }
        return joined.ToImmutable();

        bool IsSpan(int stage) => stage > 0 && stage < all.Length && all[stage].At > all[stage - 1].At;
    }
}
