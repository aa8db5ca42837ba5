using System.Text;

namespace Lanewright.Text;

/// <summary>Words of a file as findings repeat them: enough to find them by, never a whole file.</summary>
public static class Quoted
{
    private const int Longest = 60;
    private const char Mark = '\'';
    private const string Cut = "...";

    /// <summary>The words, cut when there are many.</summary>
    public static string Short(string words) => words.Length <= Longest ? words : words[..(Longest - Cut.Length)] + Cut;

    /// <summary>A message with everything long between quotation marks cut.</summary>
    public static string Shorten(string message)
    {
        if (message.Length <= Longest || !message.Contains(Mark)) return message;
        var parts = message.Split(Mark);
        var result = new StringBuilder(parts[0], message.Length);
        for (var i = 1; i < parts.Length; i++)
            result.Append(Mark).Append(i < parts.Length - 1 && IsQuoted(i) ? Short(parts[i]) : parts[i]);
        return result.ToString();
    }

    /// <summary>Every second part stands between marks.</summary>
    private static bool IsQuoted(int part) => part % 2 == 1;
}
