using System.Text.RegularExpressions;

namespace Lanewright.Workbench.Sheets;

/// <summary>How an address says which of two texts it shows, and how two sheets stand on one page.</summary>
internal static partial class SheetSides
{
    /// <summary>The key of an address.</summary>
    public const string Key = "as";

    /// <summary>A side as addresses have it.</summary>
    public static string Word(SheetSide side) => side switch { SheetSide.Saved => "saved", SheetSide.Both => "both", _ => "typed" };

    /// <summary>The side an address asks for.</summary>
    public static SheetSide Read(string word) => word switch { "saved" => SheetSide.Saved, "both" => SheetSide.Both, _ => SheetSide.Typed };

    /// <summary>The side an address asks of a kind of sheet: the text as typed where it has no other.</summary>
    public static SheetSide Read(string word, SideChoice choice) => (Read(word), choice) switch
    {
        (SheetSide.Both, not SideChoice.Beside) or (_, SideChoice.None) => SheetSide.Typed,
        var (side, _) => side,
    };

    /// <summary>The markup of a sheet with names of its own, so that it may stand beside another of its kind.</summary>
    public static string Renamed(string markup) => Names().Replace(markup, match =>
        $"{match.Groups[1].Value}=\"{string.Join(' ', match.Groups[2].Value.Split(' ').Select(n => "saved-" + n))}\"");

    // Text and values of attributes are escaped, so that a quote after a name is always one of an attribute.
    [GeneratedRegex("""(?<= )(id|for|aria-labelledby|aria-describedby)="([^"]+)"(?=[ >/])""")]
    private static partial Regex Names();
}
