namespace Lanewright.Deliverables.Labels;

/// <summary>What is written on one label.</summary>
/// <param name="Kind">What it goes on: rack, strip, tray, duct, device, trunk, cassette or cable.</param>
/// <param name="First">The first line, which identifies it.</param>
/// <param name="Second">The second line: for the end of a cable, the far end.</param>
/// <param name="Third">The third line, in small letters.</param>
public readonly record struct PrintedLabel(string Kind, string First, string Second, string Third);
