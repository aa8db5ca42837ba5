namespace Lanewright.Text;

/// <summary>Files held in memory, by name.</summary>
public sealed class TextFiles : PlanFiles
{
    private readonly Dictionary<string, string> contents;

    /// <summary>Takes names and texts.</summary>
    public TextFiles(IEnumerable<KeyValuePair<string, string>> contents) => this.contents = new(contents, StringComparer.Ordinal);

    /// <summary>One file.</summary>
    public static TextFiles Of(string path, string content) => new([new(path, content)]);

    /// <inheritdoc/>
    public override SourceText? Read(string path) =>
        contents.TryGetValue(path, out var content) ? new SourceText(path, content) : null;
}
