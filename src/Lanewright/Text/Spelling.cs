namespace Lanewright.Text;

/// <summary>Finds the word a person probably meant.</summary>
public static class Spelling
{
    private const int LongestWord = 64;

    /// <summary>The nearest known word, or null when none is near: at most a third of the letters may differ.</summary>
    public static string? Nearest(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > LongestWord) return null;
        string? best = null;
        var bestDistance = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in known)
        {
            if (candidate.Length > LongestWord || Math.Abs(candidate.Length - word.Length) >= bestDistance) continue;
            var distance = Distance(word, candidate);
            if (distance > bestDistance) continue;
            if (distance == bestDistance && (best is null || string.CompareOrdinal(candidate, best) >= 0)) continue;
            if (distance >= Math.Max(1, word.Length / 3) + 1) continue;
            best = candidate;
            bestDistance = distance;
        }
        return best;
    }

    /// <summary>A sentence that offers the nearest word, or an empty text.</summary>
    public static string DidYouMean(string word, IEnumerable<string> known) =>
        Nearest(word, known) is { } near ? $"; did you mean '{near}'?" : "";

    /// <summary>How many letters to insert, drop, change or swap, upper and lower case being half a step apart (rounded up).</summary>
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var same = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1;
                var cost = Math.Min(Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1), rows[i - 1, j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) cost = Math.Min(cost, rows[i - 2, j - 2] + 1);
                rows[i, j] = cost;
            }
        }
        return rows[a.Length, b.Length];
    }
}
