using System.Text.RegularExpressions;

namespace Lanewright.Text;

/// <summary>Words of a file as findings repeat them: enough to find them by, never a whole file.</summary>
public static partial class Quoted
{
    private const int Longest = 60;
    private const string Cut = "...";

    /// <summary>The words, cut when there are many.</summary>
    public static string Short(string words) => words.Length <= Longest ? words : words[..(Longest - Cut.Length)] + Cut;

    /// <summary>A message with everything long between quotation marks cut.</summary>
    public static string Shorten(string message) =>
        message.Length <= Longest ? message : Quotations().Replace(message, m => "'" + Short(m.Groups[1].Value) + "'");

    [GeneratedRegex("'([^']{61,})'")]
    private static partial Regex Quotations();
}
