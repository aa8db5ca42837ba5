using System.Text;

namespace Lanewright.Deliverables.Markup;

/// <summary>Text as XML can carry it: what XML 1.0 forbids becomes the replacement character.</summary>
public static class CleanText
{
    private const char Replacement = '\uFFFD';

    /// <summary>The text without characters that XML forbids.</summary>
    public static string Of(string text)
    {
        var at = FirstForbidden(text);
        if (at < 0) return text;
        var clean = new StringBuilder(text, 0, at, text.Length);
        for (var i = at; i < text.Length; i++)
        {
            if (IsPair(text, i))
            {
                clean.Append(text[i]).Append(text[++i]);
                continue;
            }
            clean.Append(IsAllowed(text[i]) ? text[i] : Replacement);
        }
        return clean.ToString();
    }

    private static int FirstForbidden(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (IsPair(text, i)) i++;
            else if (!IsAllowed(text[i])) return i;
        }
        return -1;
    }

    private static bool IsPair(string text, int at) => at + 1 < text.Length && char.IsSurrogatePair(text[at], text[at + 1]);

    /// <summary>A surrogate that stands alone is no character.</summary>
    private static bool IsAllowed(char c) =>
        c is '\t' or '\n' or '\r' || (c >= ' ' && c is not ('\uFFFE' or '\uFFFF') && !char.IsSurrogate(c));
}
