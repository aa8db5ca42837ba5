using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The largest factor by which a traffic matrix can be scaled and still be routed, with a proof from both sides.</summary>
/// <param name="AtLeast">A factor for which a routing was found.</param>
/// <param name="AtMost">A factor that prices on the links prove cannot be exceeded.</param>
/// <param name="IsExact">Whether the linear program was solved, so that both meet but for rounding.</param>
public sealed record Throughput(Share AtLeast, Share AtMost, bool IsExact)
{
    /// <summary>Computes the factor, or bounds where the program is too large. A matrix with demand that has no path scales to 0.</summary>
    public static Throughput Of(FabricGraph graph, TrafficMatrix traffic) => throw new NotSupportedException();
}
