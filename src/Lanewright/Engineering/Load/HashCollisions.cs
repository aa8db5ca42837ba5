using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What happens when few large flows, each as fast as a link, are spread over equal links by a hash. All values are exact.</summary>
/// <param name="NoCollision">Probability that no two flows meet.</param>
/// <param name="BusyLinks">Expected number of links with a flow.</param>
/// <param name="BusiestFlows">Expected number of flows on the busiest link.</param>
/// <param name="SharingFlows">Expected number of flows that share their link.</param>
/// <param name="Throughput">Expected share of the flows' rate that gets through.</param>
public sealed record HashCollisions(Share NoCollision, double BusyLinks, double BusiestFlows, double SharingFlows, Share Throughput)
{
    /// <summary>Computes them.</summary>
    /// <param name="flows">Flows, one or more.</param>
    /// <param name="links">Equal links, one or more.</param>
    public static HashCollisions Of(int flows, int links) => throw new NotSupportedException();
}
