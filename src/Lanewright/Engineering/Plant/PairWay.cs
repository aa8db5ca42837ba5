namespace Lanewright.Engineering.Plant;

/// <summary>Where a duplex port at the near end arrives.</summary>
/// <param name="Near">The port, from 1.</param>
/// <param name="Far">The port at the far end; 0 where its two fibres arrive at two ports.</param>
/// <param name="IsCrossed">Whether each transmitter meets a receiver.</param>
public sealed record PairWay(int Near, int Far, bool IsCrossed);
