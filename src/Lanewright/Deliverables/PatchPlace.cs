using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables;

/// <summary>Where one end of a cord is plugged in.</summary>
/// <param name="Device">The device or the panel.</param>
/// <param name="Port">The port as printed there: of a panel the place, and the duplex port of a cassette in it.</param>
/// <param name="Label">The port by its place in the building.</param>
/// <param name="Trunk">The trunk behind a panel; null at a device.</param>
internal sealed record PatchPlace(int Device, string Port, string Label, TrunkPatch? Trunk);
