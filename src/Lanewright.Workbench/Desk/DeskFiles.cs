using Lanewright.Text;

namespace Lanewright.Workbench.Desk;

/// <summary>The door to the plan's files as one compilation sees it: texts that are being typed lie over those on disk. Every file is read
/// once, so that one result never mixes two states of a file.</summary>
/// <param name="folder">The folder.</param>
/// <param name="typed">Texts typed and not yet saved, by name.</param>
internal sealed class DeskFiles(PlanFolder folder, IReadOnlyDictionary<string, string> typed) : PlanFiles
{
    private readonly Dictionary<string, SourceText?> read = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> problems = new(StringComparer.Ordinal);

    /// <summary>The files that were asked for, found or not, in the order of asking, with what was found on disk or typed.</summary>
    public IReadOnlyDictionary<string, SourceText?> Asked => read;

    /// <inheritdoc/>
    public override SourceText? Read(string path)
    {
        if (read.TryGetValue(path, out var known)) return known;
        var problem = "";
        var text = typed.TryGetValue(path, out var draft) ? draft : folder.Read(path, out problem);
        problems[path] = problem;
        return read[path] = text is null ? null : new SourceText(path, text);
    }

    /// <inheritdoc/>
    public override string Problem(string path) => problems.GetValueOrDefault(path, "it does not exist");
}
