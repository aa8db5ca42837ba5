namespace Lanewright.Deliverables;

/// <summary>A link that a name was found for.</summary>
/// <param name="Link">The link.</param>
/// <param name="IsWholeCable">Whether the name means the cable with all its legs rather than this link alone.</param>
public readonly record struct NamedLink(int Link, bool IsWholeCable);
