namespace Lanewright.Engineering.Pathways;

/// <summary>An edge as it is seen from one of its points, with all that a search asks of it side by side.</summary>
/// <param name="Far">The other point.</param>
/// <param name="State">That point as it is reached by this edge.</param>
/// <param name="Edge">The edge.</param>
/// <param name="Metres">How long it is.</param>
/// <param name="Side">Number of the side; 0 for none.</param>
/// <param name="Route">Index of the route; -1 inside a hall.</param>
internal readonly record struct WayArc(int Far, int State, int Edge, double Metres, int Side, int Route);
