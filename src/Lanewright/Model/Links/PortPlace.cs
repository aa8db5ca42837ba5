namespace Lanewright.Model.Links;

/// <summary>A port of a device: a cage, and which of the ports the cage is split into.</summary>
/// <param name="Cage">Index of the cage.</param>
/// <param name="Part">Which part, from 0.</param>
/// <param name="Ways">Parts the cage is split into.</param>
public readonly record struct PortPlace(short Cage, byte Part, byte Ways);
