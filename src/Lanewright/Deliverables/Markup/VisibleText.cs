namespace Lanewright.Deliverables.Markup;

/// <summary>Text as people may be shown it: characters that turn the direction of what follows them are written out, so that no name in a
/// plan can make the words after it read backwards.</summary>
public static class VisibleText
{
    /// <summary>The text with each such character as its escape.</summary>
    public static string Of(string text) => text.Any(Turns)
        ? string.Concat(text.Select(c => Turns(c) ? "\\u" + Convert.ToHexString([(byte)(c >> 8), (byte)(c & 0xFF)]) : c.ToString()))
        : text;

    /// <summary>Marks, embeddings, overrides and isolates of the bidirectional algorithm (Unicode Standard Annex 9).</summary>
    private static bool Turns(char c) =>
        c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
