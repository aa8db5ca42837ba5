namespace Lanewright.Deliverables;

/// <summary>A file to hand over.</summary>
/// <param name="Name">Its name inside the output folder, with <c>/</c> between folders.</param>
/// <param name="Write">Writes it.</param>
public sealed record Deliverable(string Name, Action<Stream> Write);
