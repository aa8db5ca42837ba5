namespace Lanewright.Cli.Printing;

/// <summary>Text as a terminal may be given it: a control character in a name or a path must not steer it.</summary>
internal static class Printable
{
    /// <summary>The text, control characters other than tabs and line ends replaced.</summary>
    public static string Of(string text) =>
        text.Any(IsControl) ? string.Concat(text.Select(c => IsControl(c) ? '\uFFFD' : c)) : text;

    private static bool IsControl(char c) => char.IsControl(c) && c is not ('\t' or '\n' or '\r');
}
