namespace Lanewright.Workbench.Desk;

/// <summary>A file of the plan as the desk holds it: what is on disk, and what is typed over it.</summary>
internal sealed class OpenFile(string name, string disk)
{
    /// <summary>Two for every text that was put together with another.</summary>
    private const int MostRemembered = 80;
    private readonly Dictionary<long, string> remembered = new() { [1] = disk };

    /// <summary>Its name from the plan's folder.</summary>
    public string Name { get; } = name;

    /// <summary>The text on disk as last seen.</summary>
    public string Disk { get; private set; } = disk;

    /// <summary>The text on disk when typing began; what is typed is a change of this text.</summary>
    public string Base { get; private set; } = disk;

    /// <summary>What is typed and not saved; null when nothing is.</summary>
    public string? Typed { get; private set; }

    /// <summary>Whether the last look did not find it on disk.</summary>
    public bool WasMissed { get; private set; }

    /// <summary>Whether it is not there on disk any more.</summary>
    public bool IsGone { get; private set; }

    /// <summary>Why what stands on disk in its place cannot be read; empty where it can, or where nothing stands there.</summary>
    public string Unreadable { get; private set; } = "";

    /// <summary>What the plan says now.</summary>
    public string Text => Typed ?? Disk;

    /// <summary>Counts every change of <see cref="Text"/>.</summary>
    public long Version { get; private set; } = 1;

    /// <summary>Whether the file was changed outside where it is typed over here, so that nothing may be saved.</summary>
    public bool IsTorn => Typed is not null && !string.Equals(Base, Disk, StringComparison.Ordinal);

    /// <summary>A look did not find it on disk; whether that makes it gone, which one look alone does not.</summary>
    public bool Miss()
    {
        var isNew = WasMissed && !IsGone;
        (IsGone, WasMissed, Unreadable) = (WasMissed, true, "");
        return isNew;
    }

    /// <summary>A look found something on disk that cannot be read; whether that is news.</summary>
    public bool Bar(string problem)
    {
        var isNew = !string.Equals(Unreadable, problem, StringComparison.Ordinal);
        (IsGone, WasMissed, Unreadable) = (false, false, problem);
        return isNew;
    }

    /// <summary>A look found it on disk; whether it had been gone, or could not be read.</summary>
    public bool Meet()
    {
        var wasAway = IsGone || Unreadable.Length > 0;
        (IsGone, WasMissed, Unreadable) = (false, false, "");
        return wasAway;
    }

    /// <summary>The text of a version; null when it is too long ago.</summary>
    public string? TextAt(long version) => remembered.GetValueOrDefault(version);

    /// <summary>Takes what was typed.</summary>
    public void Type(string text) => Set(Disk, string.Equals(text, Base, StringComparison.Ordinal) && !IsTorn ? null : text);

    /// <summary>Takes a text that was sent and put together with the text as it is; the version by which the one that was sent is
    /// known.</summary>
    public long Type(string sent, string both)
    {
        Remember(sent);
        var known = Version;
        Type(both);
        // The newest version is what the plan says, also where what was sent adds nothing to it.
        if (Version == known) Remember(Text);
        return known;
    }

    /// <summary>Takes a text from disk under what is typed.</summary>
    public void SeeOnDisk(string text) => Set(text, Typed);

    /// <summary>What is typed, on what it was typed over: a text of an earlier session.</summary>
    public void Resume(string typedOver, string typed)
    {
        Base = typedOver;
        Set(Disk, typed);
    }

    /// <summary>What is typed now counts as a change of the text on disk.</summary>
    public void Rebase(string typed)
    {
        Base = Disk;
        Set(Disk, typed);
    }

    /// <summary>The text on disk is the text.</summary>
    public void Settle(string disk) => Set(disk, null);

    private void Set(string disk, string? typed)
    {
        var before = Text;
        Disk = disk;
        Typed = typed is not null && string.Equals(typed, disk, StringComparison.Ordinal) ? null : typed;
        if (Typed is null) Base = disk;
        if (!string.Equals(before, Text, StringComparison.Ordinal)) Remember(Text);
    }

    private void Remember(string text)
    {
        remembered[++Version] = text;
        remembered.Remove(Version - MostRemembered);
    }

    /// <summary>A text with the line ends of the file: browsers know only one kind.</summary>
    public string InItsEndings(string text)
    {
        var plain = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        return Disk.Contains("\r\n", StringComparison.Ordinal) ? plain.Replace("\n", "\r\n", StringComparison.Ordinal) : plain;
    }

    /// <summary>Why a file that was changed outside is not written over, and what a person may choose.</summary>
    public string TornWords => $"{Name} was changed outside in the same lines since you began to type, so it is not written over. Take the "
        + "text on disk, or keep yours: the text on disk is then put aside when you save.";
}
