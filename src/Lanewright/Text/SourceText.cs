namespace Lanewright.Text;

/// <summary>One file as it was read: its name, its characters and where its lines begin.</summary>
public sealed class SourceText
{
    private readonly int[] lineStarts;

    /// <summary>Takes the text of a file under the name it is reported by.</summary>
    public SourceText(string path, string content)
    {
        Path = path;
        Content = content;
        lineStarts = FindLineStarts(content);
    }

    /// <summary>The name people know the file by.</summary>
    public string Path { get; }

    /// <summary>All characters.</summary>
    public string Content { get; }

    /// <summary>How many lines there are; at least one.</summary>
    public int LineCount => lineStarts.Length;

    /// <summary>Where a character stands, counted from line 1 and column 1.</summary>
    public LinePosition PositionOf(int offset)
    {
        var at = Math.Clamp(offset, 0, Content.Length);
        var line = Array.BinarySearch(lineStarts, at);
        if (line < 0) line = ~line - 1;
        return new LinePosition(line + 1, at - lineStarts[line] + 1);
    }

    /// <summary>The offset at which a line (counted from 1) begins.</summary>
    public int StartOfLine(int line) => lineStarts[Math.Clamp(line - 1, 0, lineStarts.Length - 1)];

    /// <summary>The characters of a line (counted from 1) without its end.</summary>
    public ReadOnlySpan<char> Line(int line)
    {
        var start = StartOfLine(line);
        var end = line < lineStarts.Length ? lineStarts[line] : Content.Length;
        return Content.AsSpan(start, end - start).TrimEnd("\r\n");
    }

    /// <summary>A piece of this text.</summary>
    public SourceSpan Span(int start, int length) => new(this, start, length);

    private static int[] FindLineStarts(string content)
    {
        var starts = new List<int> { 0 };
        for (var i = content.IndexOf('\n', StringComparison.Ordinal); i >= 0; i = content.IndexOf('\n', i + 1))
            starts.Add(i + 1);
        return [.. starts];
    }
}
