namespace Lanewright.Engineering.Fabrics;

/// <summary>A leaf's ports.</summary>
/// <param name="Down">Ports for hosts.</param>
/// <param name="Up">Uplinks.</param>
/// <param name="Unused">Ports, or lanes where they are counted, that neither can use.</param>
public sealed record LeafSplit(int Down, int Up, int Unused);
