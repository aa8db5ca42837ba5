namespace Lanewright.Workbench.Desk;

/// <summary>What is kept beside the plan, in the folder <c>.lanewright</c>: texts typed and not saved, the text before the last save, and
/// texts put aside.</summary>
internal sealed class Keepsakes(PlanFolder folder)
{
    private const string Place = ".lanewright/";
    private const string Typed = ".typed";
    private const string Under = ".typed-over";

    private readonly Dictionary<string, string> kept = new(StringComparer.Ordinal);

    /// <summary>Keeps what is typed over a text, so that neither a crash of the browser nor one of the server loses it.</summary>
    public void KeepTyped(string name, string over, string typed)
    {
        // In this order, a crash between the two leaves a text that is refused rather than one that overwrites.
        if (kept.GetValueOrDefault(name) != over) folder.Write(PathOf(name, Under), over);
        kept[name] = over;
        folder.Write(PathOf(name, Typed), typed);
    }

    /// <summary>What was typed in an earlier session and never saved.</summary>
    public (string Over, string Typed)? TypedBefore(string name) =>
        folder.Read(PathOf(name, Typed), out _) is { } typed && folder.Read(PathOf(name, Under), out _) is { } over ? (over, typed) : null;

    /// <summary>Drops what was typed.</summary>
    public void DropTyped(string name)
    {
        kept.Remove(name);
        folder.Remove(PathOf(name, Typed));
        folder.Remove(PathOf(name, Under));
    }

    /// <summary>Keeps the text that a save replaces.</summary>
    public void KeepPrevious(string name, string text) => folder.Write(PathOf(name, ".previous"), text);

    /// <summary>Keeps a text that a person gave up.</summary>
    public void KeepDiscarded(string name, string text) => folder.Write(PathOf(name, ".discarded"), text);

    private static string PathOf(string name, string ending) => Place + Uri.EscapeDataString(name) + ending;
}
