using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Where in-line amplifiers stand: at sites between spans, or on spans that have huts anywhere. Of all divisions of a line at
/// its sites into so many stretches the one is taken whose amplifiers add least noise; light goes on unamplified past the other sites.
/// Spans with huts are cut into equal pieces, which need not be the best.</summary>
internal sealed class AmplifierPlaces
{
    /// <summary>A stretch that no amplifier makes up for counts as more than any other.</summary>
    private const double BeyondGain = 1e30;

    private readonly ImmutableArray<LineSpan> spans;
    private readonly int stretches;
    private readonly Decibels? highest;
    private readonly int[] pieces;

    private AmplifierPlaces(ImmutableArray<LineSpan> spans, int stretches, Decibels? highest)
    {
        (this.spans, this.stretches, this.highest) = (spans, stretches, highest);
        pieces = new int[spans.Length];
        Array.Fill(pieces, 1);
    }

    /// <summary>The spans in so many stretches, those that light goes on from marked; null where there are not so many places.</summary>
    /// <param name="spans">The spans as described.</param>
    /// <param name="stretches">How many stretches, two or more: one more than amplifiers between.</param>
    /// <param name="highest">The highest gain; null where none is known.</param>
    public static ImmutableArray<LineSpan>? Of(ImmutableArray<LineSpan> spans, int stretches, Decibels? highest) =>
        new AmplifierPlaces(spans, stretches, highest).Best();

    private ImmutableArray<LineSpan>? Best()
    {
        while (pieces.Sum() < stretches)
        {
            if (LongestPiece() is not { } next) return null;
            pieces[next]++;
        }
        var best = Divided();
        // Every place on a span takes an amplifier, so that a further one is worth it only where it takes more noise away than it costs
        // elsewhere.
        while (best is not null && Finer(best.Value.Noise) is { } finer)
        {
            pieces[finer.Span]++;
            best = finer.Found;
        }
        return best?.Spans;
    }

    /// <summary>The span that may be divided whose pieces lose most; null where none may.</summary>
    private int? LongestPiece()
    {
        (int Span, Decibels Loss)? longest = null;
        for (var i = 0; i < pieces.Length; i++)
        {
            if (!spans[i].MayDivide) continue;
            var loss = spans[i].Loss * (1.0 / pieces[i]);
            if (longest is not { } so || loss > so.Loss) longest = (i, loss);
        }
        return longest?.Span;
    }

    private (int Span, (ImmutableArray<LineSpan> Spans, double Noise) Found)? Finer(double noise)
    {
        (int Span, (ImmutableArray<LineSpan> Spans, double Noise) Found)? best = null;
        for (var i = 0; i < pieces.Length; i++)
        {
            if (!spans[i].MayDivide || pieces.Sum(p => p - 1) >= stretches - 1) continue;
            pieces[i]++;
            if (Divided() is { } found && found.Noise < (best?.Found.Noise ?? noise)) best = (i, found);
            pieces[i]--;
        }
        return best;
    }

    /// <summary>The division of the pieces into stretches whose amplifiers add least noise: what each adds goes with the loss before it,
    /// so that the best first part of a division is the best of its own (Bellman 1957).</summary>
    private (ImmutableArray<LineSpan> Spans, double Noise)? Divided()
    {
        var (all, isForced) = Pieces();
        var loss = new double[all.Length + 1];
        for (var i = 0; i < all.Length; i++) loss[i + 1] = loss[i] + all[i].Loss.Value;
        var (least, begins) = (new double[stretches + 1, all.Length + 1], new int[stretches + 1, all.Length + 1]);
        for (var i = 1; i <= all.Length; i++) least[0, i] = double.PositiveInfinity;
        for (var stretch = 1; stretch <= stretches; stretch++)
        {
            least[stretch, 0] = double.PositiveInfinity;
            for (var end = 1; end <= all.Length; end++)
            {
                least[stretch, end] = double.PositiveInfinity;
                for (var begin = end - 1; begin >= 0; begin--)
                {
                    var noise = least[stretch - 1, begin] + Noise(loss[end] - loss[begin]);
                    if (noise < least[stretch, end]) (least[stretch, end], begins[stretch, end]) = (noise, begin);
                    if (begin > 0 && isForced[begin - 1]) break;
                }
            }
        }
        if (double.IsInfinity(least[stretches, all.Length])) return null;
        var marked = all.ToBuilder();
        for (var (stretch, end) = (stretches, all.Length); stretch > 0; end = begins[stretch--, end])
            for (var i = begins[stretch, end]; i < end - 1; i++) marked[i] = all[i] with { GoesOn = true };
        return (marked.ToImmutable(), least[stretches, all.Length]);
    }

    private double Noise(double loss) => Decibels.From(loss).Ratio
        * (highest is { } most && Rounding.IsAbove(loss, most.Value) ? BeyondGain : 1);

    /// <summary>The pieces, and whether an amplifier has to stand behind each: a span is divided for no other reason.</summary>
    private (ImmutableArray<LineSpan> All, bool[] IsForced) Pieces()
    {
        var (all, isForced) = (ImmutableArray.CreateBuilder<LineSpan>(), new List<bool>());
        for (var i = 0; i < pieces.Length; i++)
        {
            var piece = spans[i].Piece(pieces[i]);
            for (var n = 1; n <= pieces[i]; n++)
            {
                all.Add(pieces[i] == 1 ? piece : piece with { Name = $"{piece.Name} {Numerals.Whole(n)}".TrimStart() });
                isForced.Add(n < pieces[i]);
            }
        }
        return (all.ToImmutable(), [.. isForced]);
    }
}
