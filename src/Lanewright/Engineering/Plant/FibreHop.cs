namespace Lanewright.Engineering.Plant;

/// <summary>A fibre's way through one trunk.</summary>
/// <param name="Near">Where it goes in at the front of a panel.</param>
/// <param name="Fibre">Its number in the cable, from 1; 0 where that is not known.</param>
/// <param name="Far">Where it comes out at the front of the other.</param>
public sealed record FibreHop(FibreSpot Near, int Fibre, FibreSpot Far);
