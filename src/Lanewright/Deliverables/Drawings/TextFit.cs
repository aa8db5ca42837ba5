using System.Collections.Immutable;
using System.Text;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Fits text into widths. A drawing does not know the font it will be shown in, so widths are reckoned as those of a wide
/// one.</summary>
public static class TextFit
{
    private const string Cut = "\u2026";
    private const double BoldFactor = 1.1;

    /// <summary>The widest a text is likely to be, in units of the drawing.</summary>
    public static double Width(string text, double size, bool bold = false)
    {
        var ems = 0.0;
        foreach (var c in text) ems += Ems(c);
        return ems * size * (bold ? BoldFactor : 1);
    }

    /// <summary>The text, cut short with an ellipsis when it is wider than allowed.</summary>
    public static string Short(string text, double width, double size, bool bold = false)
    {
        if (Width(text, size, bold) <= width) return text;
        var room = width - Width(Cut, size, bold);
        var kept = 0;
        for (var used = 0.0; kept < text.Length; kept++)
        {
            used += Width(text.Substring(kept, 1), size, bold);
            if (used > room) break;
        }
        // Half of a surrogate pair is no character.
        if (kept > 0 && char.IsHighSurrogate(text[kept - 1])) kept--;
        return text[..kept].TrimEnd() + Cut;
    }

    /// <summary>The text, or where it is wider than allowed its beginning and its end with an ellipsis between them: names of a row begin
    /// alike, and their numbers tell them apart.</summary>
    public static string Middle(string text, double width, double size)
    {
        if (Width(text, size) <= width) return text;
        var room = width - Width(Cut, size);
        var (tail, head) = (text.Length, 0);
        while (tail > 0 && Width(text[(tail - 1)..], size) <= room / 2) tail--;
        while (head < tail && Width(text[..(head + 1)] + text[tail..], size) <= room) head++;
        // Half of a surrogate pair is no character.
        if (head > 0 && char.IsHighSurrogate(text[head - 1])) head--;
        if (tail < text.Length && char.IsLowSurrogate(text[tail])) tail++;
        return text[..head] + Cut + text[tail..];
    }

    /// <summary>The text in lines of at most a width, broken at blanks and after hyphens and slashes; what is more than the lines allowed
    /// is cut.</summary>
    public static ImmutableArray<string> Lines(string text, double width, double size, int most = int.MaxValue, bool bold = false)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = new StringBuilder();
        foreach (var word in Words(text))
        {
            if (line.Length > 0 && Width(line + word.TrimEnd(), size, bold) > width)
            {
                lines.Add(line.ToString().TrimEnd());
                line.Clear();
            }
            line.Append(word);
        }
        if (line.Length > 0) lines.Add(line.ToString().TrimEnd());
        if (lines.Count > most)
        {
            var rest = string.Join(' ', lines.Skip(most - 1));
            while (lines.Count >= most) lines.RemoveAt(lines.Count - 1);
            lines.Add(rest);
        }
        for (var i = 0; i < lines.Count; i++) lines[i] = Short(lines[i], width, size, bold);
        return lines.ToImmutable();
    }

    /// <summary>Words with the blank, hyphen or slash that ends each.</summary>
    private static IEnumerable<string> Words(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var isBlank = text[i] is ' ' or '\n' or '\t' or '\r';
            var isHinge = text[i] is '-' or '/' && i > 0 && char.IsLetter(text[i - 1]) && i + 1 < text.Length && char.IsLetter(text[i + 1]);
            if (!isBlank && !isHinge) continue;
            if (isBlank && i == start)
            {
                start = i + 1;
                continue;
            }
            yield return isBlank ? text[start..i] + " " : text[start..(i + 1)];
            start = i + 1;
        }
        if (start < text.Length) yield return text[start..];
    }

    private static double Ems(char c) => c switch
    {
        'i' or 'l' or 'j' or 'I' or '\'' or '|' => 0.3,
        ' ' or '.' or ',' or ':' or ';' or '/' or '!' => 0.34,
        '-' or '(' or ')' or '[' or ']' or 't' or 'f' or 'r' => 0.42,
        'm' or 'M' or 'W' or 'w' or '@' or '%' or '\u2026' => 1.0,
        >= '0' and <= '9' => 0.64,
        >= 'A' and <= 'Z' => 0.72,
        >= 'a' and <= 'z' => 0.62,
        < '\u2E80' => 0.8,
        _ => 1.0,
    };
}
