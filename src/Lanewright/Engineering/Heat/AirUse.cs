namespace Lanewright.Engineering.Heat;

/// <summary>What the devices of a row do with the air of an aisle beside it.</summary>
/// <param name="Moves">Whether some move air between front and back.</param>
/// <param name="Breathes">Whether some are known to breathe from the aisle.</param>
/// <param name="Blows">Whether some are known to blow into it.</param>
public readonly record struct AirUse(bool Moves, bool Breathes, bool Blows);
