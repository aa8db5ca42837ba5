using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds all answers that are cheapest somewhere in a range of prices, by solving only where two of them cross
/// (the method of Eisner and Severance, 1976): the least cost is a concave chain of lines, so a corner between two known lines is a
/// true one exactly when nothing cheaper is found at their crossing.</summary>
public static class LowerEnvelope
{
    /// <summary>Pieces of the chain at most; past this the range is reported as far as it is known.</summary>
    public const int MostPieces = 64;

    /// <summary>The chain, from the low end of the range to the high one; neighbouring pieces of one line are one piece.</summary>
    /// <param name="low">Where the range begins.</param>
    /// <param name="high">Where it ends.</param>
    /// <param name="solve">The cheapest answer at a price, with its line.</param>
    public static ImmutableArray<EnvelopePiece<T>> Of<T>(decimal low, decimal high, Func<decimal, (CostLine Line, T Answer)> solve)
    {
        var left = solve(low);
        var right = solve(high);
        var lines = new List<(CostLine Line, T Answer)> { left };
        Between(left, right, solve, lines);
        if (!IsSame(lines[^1], right)) lines.Add(right);
        var pieces = ImmutableArray.CreateBuilder<EnvelopePiece<T>>();
        var from = low;
        for (var i = 0; i < lines.Count; i++)
        {
            var to = i + 1 < lines.Count ? Math.Clamp(lines[i].Line.Crossing(lines[i + 1].Line) ?? from, from, high) : high;
            // An answer that only touches the chain where two others meet wins nowhere.
            if (to > from || lines.Count == 1) pieces.Add(new EnvelopePiece<T>(from, to, lines[i].Line, lines[i].Answer));
            from = to;
        }
        return pieces.ToImmutable();
    }

    private static void Between<T>(
        (CostLine Line, T Answer) left, (CostLine Line, T Answer) right,
        Func<decimal, (CostLine Line, T Answer)> solve, List<(CostLine Line, T Answer)> found)
    {
        if (IsSame(left, right) || left.Line.Crossing(right.Line) is not { } at || found.Count >= MostPieces) return;
        var middle = solve(at);
        // The same cost as both known lines: they meet here and nothing lies below.
        if (middle.Line.At(at) >= left.Line.At(at) || IsSame(middle, left) || IsSame(middle, right)) return;
        Between(left, middle, solve, found);
        found.Add(middle);
        Between(middle, right, solve, found);
    }

    /// <summary>Answers told alike are one line, though prices rounded to hundredths may tilt it a little.</summary>
    private static bool IsSame<T>((CostLine Line, T Answer) one, (CostLine Line, T Answer) other) =>
        one.Line == other.Line || EqualityComparer<T>.Default.Equals(one.Answer, other.Answer);
}
