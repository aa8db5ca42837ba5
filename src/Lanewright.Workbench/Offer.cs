namespace Lanewright.Workbench;

/// <summary>A name that the editor offers.</summary>
/// <param name="Name">The name as the plan knows it.</param>
/// <param name="About">What it is, in a few words.</param>
internal readonly record struct Offer(string Name, string About);
