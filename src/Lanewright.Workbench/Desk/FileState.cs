namespace Lanewright.Workbench.Desk;

/// <summary>A file of the plan at one moment.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">What the plan says now.</param>
/// <param name="Version">Which version of the text this is.</param>
/// <param name="IsTyped">Whether the text is typed and not saved.</param>
/// <param name="IsGone">Whether the file is not there on disk any more.</param>
/// <param name="Unreadable">Why what stands on disk in its place cannot be read; empty where it can.</param>
/// <param name="IsTorn">Whether the file was changed outside where it is typed over here.</param>
internal sealed record FileState(string Name, string Text, long Version, bool IsTyped, bool IsGone, string Unreadable, bool IsTorn)
{
    /// <summary>The text on disk, as it was read last.</summary>
    public string Disk { get; private init; } = "";

    /// <summary>The state of a file.</summary>
    public static FileState Of(OpenFile file) =>
        new(file.Name, file.Text, file.Version, file.Typed is not null, file.IsGone, file.Unreadable, file.IsTorn) { Disk = file.Disk };
}
