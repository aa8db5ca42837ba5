using Lanewright.Quantities;

namespace Lanewright.Workbench.Desk;

/// <summary>What is kept beside the plan, in the folder <c>.lanewright</c>: texts typed and not saved, the text before the last save, and
/// texts put aside.</summary>
internal sealed class Keepsakes(PlanFolder folder)
{
    private const string Place = ".lanewright/";
    private const string Typed = ".typed";
    private const string Under = ".typed-over";
    private const int MostAside = 20;

    private readonly Dictionary<string, (string Over, string Typed)> kept = new(StringComparer.Ordinal);
    private bool isIgnored;

    /// <summary>Keeps what is typed over a text, so that neither a crash of the browser nor one of the server loses it; drops it where
    /// nothing is typed any more.</summary>
    public void Keep(string name, (string Over, string Typed)? typed)
    {
        if (typed is not { } now)
        {
            kept.Remove(name);
            folder.Remove(PathOf(name, Typed));
            folder.Remove(PathOf(name, Under));
            return;
        }
        var isKnown = kept.TryGetValue(name, out var before);
        if (isKnown && before == now) return;
        // In this order, a crash between the two leaves a text that is refused rather than one that overwrites.
        if (!isKnown || before.Over != now.Over) Write(PathOf(name, Under), now.Over);
        Write(PathOf(name, Typed), now.Typed);
        kept[name] = now;
    }

    /// <summary>What was typed in an earlier session and never saved.</summary>
    public (string Over, string Typed)? TypedBefore(string name) =>
        folder.Read(PathOf(name, Typed), out _) is { } typed && folder.Read(PathOf(name, Under), out _) is { } over ? (over, typed) : null;

    /// <summary>Keeps the text that a save replaces.</summary>
    public void KeepPrevious(string name, string text) => Write(PathOf(name, ".previous"), text);

    /// <summary>Keeps the newest text that was not taken because the same lines were changed elsewhere.</summary>
    public void KeepRefused(string name, string text) => Write(PathOf(name, ".refused"), text);

    /// <summary>Keeps a text that a person gave up, beside those put aside before.</summary>
    public void PutAside(string name, string text)
    {
        string At(int number) => PathOf(name, ".aside-" + Numerals.Whole(number));
        var number = 1;
        while (number < MostAside && folder.Read(At(number), out _) is { } other)
        {
            if (other == text) return;
            number++;
        }
        // When there is no room for more the oldest makes it.
        if (number == MostAside && folder.Read(At(number), out _) is not null)
            for (var n = 1; n < MostAside; n++)
                if (folder.Read(At(n + 1), out _) is { } next) Write(At(n), next);
        Write(At(number), text);
    }

    /// <summary>What is kept here is nobody's but the person's who typed it: version control leaves it alone.</summary>
    public static void Ignore(PlanFolder folder)
    {
        if (folder.Read(Place + ".gitignore", out _) is null) folder.Write(Place + ".gitignore", "*\n");
    }

    private void Write(string path, string text)
    {
        if (!isIgnored) Ignore(folder);
        isIgnored = true;
        folder.Write(path, text);
    }

    private static string PathOf(string name, string ending) => Place + Uri.EscapeDataString(name) + ending;
}
