using System.Collections.Immutable;
using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Plant;

/// <summary>A place at the front of a panel.</summary>
/// <param name="Slot">Its number, from 1.</param>
/// <param name="Trunk">The trunks of which one ends there; null where it is free.</param>
/// <param name="Number">Which of them.</param>
/// <param name="Ports">Ports it shows: those of a cassette, 1 for an open array, 0 where it is free.</param>
/// <param name="Used">The ports that cords are plugged into, rising.</param>
/// <param name="IsOpen">Whether an array is open there.</param>
public sealed record PanelPlace(int Slot, TrunkGroup? Trunk, int Number, int Ports, ImmutableArray<int> Used, bool IsOpen);
