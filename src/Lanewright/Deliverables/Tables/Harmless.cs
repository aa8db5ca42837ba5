namespace Lanewright.Deliverables.Tables;

/// <summary>Makes text safe for spreadsheets: what begins like a formula is not run as one.</summary>
public static class Harmless
{
    /// <summary>The text, with an apostrophe before it when it begins like a formula.</summary>
    public static string Text(string text) =>
        text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
}
