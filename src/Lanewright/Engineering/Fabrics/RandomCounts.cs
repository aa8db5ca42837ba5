namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of switches joined at random.</summary>
/// <param name="Hosts">Hosts.</param>
/// <param name="SwitchLinks">Links between switches; an odd port is left over.</param>
/// <param name="LeastMeanDistance">Links on the way between two switches in the mean, which no such network goes below.</param>
public sealed record RandomCounts(long Hosts, long SwitchLinks, double LeastMeanDistance)
{
    /// <summary>The most of its rate that every host can send to all others at once, as a part of one; never above 1.</summary>
    public double MostThroughput => Math.Min(1, 2 * SwitchLinks / (Hosts * LeastMeanDistance));
}
