namespace Lanewright.Engineering.Pathways;

/// <summary>What joins two points: a stretch of a pathway, a fall between two, the way from a rack or an exit to a pathway, or a route
/// between halls.</summary>
/// <param name="A">One point.</param>
/// <param name="B">The other.</param>
/// <param name="Metres">How long it is.</param>
/// <param name="Stretch">The stretch; -1 where cables lie in nothing.</param>
/// <param name="Hall">Index of the hall; of a route the one that <paramref name="A"/> is in.</param>
/// <param name="Side">Number of the side; 0 for none.</param>
/// <param name="Route">Index of the route; -1 inside a hall.</param>
public readonly record struct WayEdge(int A, int B, double Metres, int Stretch, int Hall, int Side, int Route)
{
    /// <summary>The end that is not the given one.</summary>
    public int Far(int point) => A == point ? B : A;
}
