namespace Lanewright.Engineering.Lines.Routes;

/// <summary>Two routes that share nothing that may fail, cheapest together.</summary>
/// <param name="First">The cheaper one.</param>
/// <param name="Second">The other.</param>
public sealed record RoutePair(Route First, Route Second)
{
    /// <summary>What both cost.</summary>
    public double Cost => First.Cost + Second.Cost;
}
