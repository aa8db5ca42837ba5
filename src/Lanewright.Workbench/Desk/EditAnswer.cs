namespace Lanewright.Workbench.Desk;

/// <summary>What became of a change of a text.</summary>
/// <param name="IsDone">Whether it was taken.</param>
/// <param name="Words">What to tell the person; empty when there is nothing to tell.</param>
/// <param name="Version">The version the text has now.</param>
/// <param name="Text">The text, where it is not what was sent.</param>
internal sealed record EditAnswer(bool IsDone, string Words, long Version, string? Text)
{
    /// <summary>The version of the text that was sent, where it was put together with another: what is typed over it is a change of
    /// it.</summary>
    public long? OwnVersion { get; init; }

    /// <summary>Whether what is typed is on disk too, so that no crash loses it.</summary>
    public bool IsKept { get; private init; } = true;

    /// <summary>The same, of a text that is taken and could not be brought to disk.</summary>
    public EditAnswer NotKept(string why) => IsKept
        ? this with { IsKept = false, Words = $"{Words} What is typed is not kept on disk: {why}".TrimStart() }
        : this;
}
