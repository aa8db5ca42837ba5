namespace Lanewright.Workbench.Sheets;

/// <summary>A cell of a table on a sheet.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="Address">Where it leads; empty for nowhere.</param>
/// <param name="Style">How it looks; empty for plain.</param>
internal readonly record struct Entry(string Text, string Address = "", string Style = "")
{
    /// <summary>A plain text.</summary>
    public static implicit operator Entry(string text) => new(text);
}
