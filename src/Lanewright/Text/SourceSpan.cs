namespace Lanewright.Text;

/// <summary>A piece of a file: what a finding points at. The default is no place at all.</summary>
/// <param name="Source">The file, or null for a thing no file says.</param>
/// <param name="Start">Offset of the first character.</param>
/// <param name="Length">How many characters.</param>
public readonly record struct SourceSpan(SourceText? Source, int Start, int Length)
{
    /// <summary>The name of the file, or an empty text.</summary>
    public string Path => Source?.Path ?? "";

    /// <summary>Line and column of the first character.</summary>
    public LinePosition Position => Source?.PositionOf(Start) ?? default;

    /// <summary>The characters themselves.</summary>
    public string Text => Source is null ? "" : Source.Content.Substring(Start, Math.Min(Length, Source.Content.Length - Start));
}
