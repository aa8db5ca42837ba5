namespace Lanewright.Workbench.Desk;

/// <summary>What becomes of a file of the plan when a person changes its text, or somebody else the file on disk. Nothing that anybody
/// wrote is written over, and nothing that anybody typed is lost.</summary>
/// <param name="folder">The plan's folder.</param>
/// <param name="keepsakes">Where texts are kept beside the plan.</param>
internal sealed class Edits(PlanFolder folder, Keepsakes keepsakes)
{
    private readonly Dictionary<string, (DateTime, long)> stamps = new(StringComparer.Ordinal);

    /// <summary>Takes a text that was typed over a version of the file.</summary>
    public EditAnswer Type(OpenFile file, long version, string text)
    {
        var own = file.InItsEndings(text);
        if (file.Version == version)
        {
            file.Type(own);
            return new EditAnswer(true, "", file.Version, null);
        }
        if (file.TextAt(version) is { } before && LineMerge.Of(before, own, file.Text) is { } both)
        {
            // Who typed on meanwhile has not seen the merged text: what comes next is a change of their own.
            var ownVersion = file.Type(own, both);
            return new EditAnswer(true, "The text was changed elsewhere too; both changes are in it now.", file.Version, both)
            {
                OwnVersion = ownVersion,
            };
        }
        return Refused(file, own);
    }

    /// <summary>Puts a text aside that a person gave up for another.</summary>
    public EditAnswer PutAside(OpenFile file, string text)
    {
        keepsakes.PutAside(file.Name, file.InItsEndings(text));
        return new EditAnswer(true, "The other text is shown; yours is kept in .lanewright.", file.Version, null);
    }

    /// <summary>Puts a text in the place of the other that it could not be put together with; the other is put aside.</summary>
    public EditAnswer Replace(OpenFile file, long version, string text)
    {
        if (file.Version != version)
            return new EditAnswer(false, "The text was changed once more; look at it first.", file.Version, file.Text);
        keepsakes.PutAside(file.Name, file.Text);
        file.Type(file.InItsEndings(text));
        return new EditAnswer(true, "Your text is in place; the other is kept in .lanewright.", file.Version, null);
    }

    /// <summary>Writes what is typed to disk, unless the file was changed outside meanwhile.</summary>
    public EditAnswer Save(OpenFile file, long version)
    {
        if (file.Version != version)
            return new EditAnswer(false, "The text was changed elsewhere a moment ago; look at it and save again.", file.Version,
                file.Text);
        // A text of the same length, written within one tick of the clock of the disk, has the same stamp.
        stamps.Remove(file.Name);
        LookAt(file);
        if (file.Unreadable.Length > 0)
            return new EditAnswer(false, $"{file.Name} on disk cannot be read: {file.Unreadable}. It is not written over; put it right, or "
                + "move it away, and save again.", file.Version, file.Text);
        if (file.Typed is null && !file.IsGone)
            return new EditAnswer(true, "Nothing to save.", file.Version, file.Version == version ? null : file.Text);
        var typed = file.Text;
        if (file.IsTorn) return new EditAnswer(false, file.TornWords, file.Version, file.Text);
        if (file.Version != version)
            return new EditAnswer(false, "The file was changed outside, in other lines. Both changes are in the text now; look at it and "
                + "save again.", file.Version, file.Text);
        keepsakes.KeepPrevious(file.Name, file.Disk);
        folder.Write(file.Name, typed);
        file.Settle(typed);
        return new EditAnswer(true, "Saved. The text before is kept in .lanewright.", file.Version, null);
    }

    /// <summary>Gives up what is typed; the text is put aside.</summary>
    public EditAnswer Discard(OpenFile file, long version)
    {
        if (file.Version != version)
            return new EditAnswer(false, "The text was changed elsewhere a moment ago; look at it first.", file.Version, file.Text);
        if (file.Typed is { } typed) keepsakes.PutAside(file.Name, typed);
        file.Settle(file.Disk);
        var shown = file.Unreadable.Length > 0
            ? $"{file.Name} on disk cannot be read: {file.Unreadable}. The text that was read last is shown."
            : file.IsGone ? $"{file.Name} is not on disk any more. The text that was read last is shown."
            : "The text on disk is shown.";
        return new EditAnswer(true, shown + " What was typed is kept in .lanewright.", file.Version, file.Text);
    }

    /// <summary>A person has seen that the file was changed outside and wants what is typed: the next save may write it.</summary>
    public static EditAnswer KeepTyped(OpenFile file, long version)
    {
        if (file.Version != version || file.Typed is not { } typed)
            return new EditAnswer(false, "The text was changed elsewhere a moment ago; look at it first.", file.Version, file.Text);
        file.Rebase(typed);
        return new EditAnswer(true, "The next save replaces the text on disk, which is then kept in .lanewright.", file.Version, null);
    }

    /// <summary>Looks whether a file was changed outside. Where it is typed over, both changes are put together if they may be.</summary>
    public bool LookAt(OpenFile file)
    {
        var stamp = folder.StampOf(file.Name);
        if (!file.WasMissed && file.Unreadable.Length == 0 && stamps.TryGetValue(file.Name, out var known) && known == stamp) return false;
        // A file that is being replaced is missing for a moment; only one that is still missing at the next look is gone.
        if (folder.Read(file.Name, out var problem) is not { } text)
            return folder.IsTaken(file.Name) ? file.Bar(problem) : file.Miss();
        stamps[file.Name] = stamp;
        var isBack = file.Meet();
        if (string.Equals(text, file.Disk, StringComparison.Ordinal)) return isBack;
        var merged = file.Typed is { } typed ? LineMerge.Of(file.Base, typed, text) : null;
        file.SeeOnDisk(text);
        if (merged is not null) file.Rebase(merged);
        return true;
    }

    /// <summary>Nobody's typing is lost, not even what is typed while two windows disagree.</summary>
    private EditAnswer Refused(OpenFile file, string own)
    {
        EditAnswer Words(string kept) => new(false, "The same lines were changed in another window or outside. Your text is still "
            + $"here{kept}; take the other text, or put yours in its place.", file.Version, file.Text);
        try
        {
            keepsakes.KeepRefused(file.Name, own);
            return Words(", and is kept in .lanewright");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Words("").NotKept(fault.Message);
        }
    }
}
