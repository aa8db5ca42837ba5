using System.Text;
using Lanewright.Deliverables.Markup;
using Lanewright.Deliverables.Tables;

namespace Lanewright.Deliverables.Workbook;

/// <summary>Text as a spreadsheet cell can hold it.</summary>
public static class SheetText
{
    /// <summary>Characters a cell holds at most.</summary>
    public const int Longest = 32_767;

    private const string Cut = "...";

    /// <summary>Without what XML forbids, harmless where it begins like a formula, and cut where it is too long.</summary>
    public static string Of(string text)
    {
        var clean = Unescaped(Harmless.Text(CleanText.Of(text)));
        return clean.Length <= Longest ? clean : clean[..(Longest - Cut.Length)] + Cut;
    }

    /// <summary>Spreadsheets read <c>_x0041_</c> as a letter; the underscore before such a text is written as one itself.</summary>
    private static string Unescaped(string text)
    {
        if (!text.Contains("_x", StringComparison.Ordinal)) return text;
        var result = new StringBuilder(text.Length + 8);
        for (var i = 0; i < text.Length; i++)
        {
            if (IsEscape(text, i)) result.Append("_x005F_");
            else result.Append(text[i]);
        }
        return result.ToString();
    }

    private static bool IsEscape(string text, int at)
    {
        if (at + 6 >= text.Length || text[at] != '_' || text[at + 1] != 'x' || text[at + 6] != '_') return false;
        for (var i = at + 2; i < at + 6; i++)
            if (!char.IsAsciiHexDigit(text[i])) return false;
        return true;
    }
}
