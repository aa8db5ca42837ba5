namespace Lanewright.Text;

/// <summary>Orders names as people do: <c>leaf-2</c> before <c>leaf-10</c>. Ties fall back to plain order, so it is total.</summary>
public sealed class NaturalOrder : IComparer<string>
{
    /// <summary>The one instance.</summary>
    public static NaturalOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        if (x is null || y is null) return string.CompareOrdinal(x, y);
        int i = 0, j = 0;
        while (i < x.Length && j < y.Length)
        {
            var order = char.IsAsciiDigit(x[i]) && char.IsAsciiDigit(y[j])
                ? CompareNumbers(x, ref i, y, ref j)
                : x[i++].CompareTo(y[j++]);
            if (order != 0) return order;
        }
        var rest = (x.Length - i).CompareTo(y.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(x, y);
    }

    private static int CompareNumbers(string x, ref int i, string y, ref int j)
    {
        var left = TakeDigits(x, ref i);
        var right = TakeDigits(y, ref j);
        return left.Length != right.Length
            ? left.Length.CompareTo(right.Length)
            : left.CompareTo(right, StringComparison.Ordinal);
    }

    private static ReadOnlySpan<char> TakeDigits(string text, ref int at)
    {
        while (at < text.Length - 1 && text[at] == '0' && char.IsAsciiDigit(text[at + 1])) at++;
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text.AsSpan(start, at - start);
    }
}
