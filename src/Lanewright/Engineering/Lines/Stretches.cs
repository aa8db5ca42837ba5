using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Stretches between amplifiers: runs of spans.</summary>
internal static class Stretches
{
    /// <summary>The runs in order: with in-line amplifiers each ends where light does not go on unamplified, otherwise all spans are
    /// one.</summary>
    public static ImmutableArray<ImmutableArray<LineSpan>> Of(ImmutableArray<LineSpan> spans, LineScheme scheme)
    {
        if (scheme != LineScheme.InLine) return [spans];
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<LineSpan>>();
        var begin = 0;
        for (var i = 0; i < spans.Length; i++)
        {
            if (spans[i].GoesOn && i < spans.Length - 1) continue;
            runs.Add(spans[begin..(i + 1)]);
            begin = i + 1;
        }
        return runs.ToImmutable();
    }

    /// <summary>What a run loses.</summary>
    public static Decibels Loss(ImmutableArray<LineSpan> run) => run.Aggregate(default(Decibels), (sum, span) => sum + span.Loss);

    /// <summary>The most that a run loses.</summary>
    public static Decibels MostLoss(ImmutableArray<LineSpan> spans, LineScheme scheme) => Of(spans, scheme).Max(Loss);
}
