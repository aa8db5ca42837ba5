using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>One way to run a cage of a lane count and lane rate, as platforms usually allow it.</summary>
/// <param name="Ways">Ports the cage becomes.</param>
/// <param name="Rate">Rate of each port.</param>
/// <param name="LanesPerPort">Lanes of each port.</param>
/// <param name="Signal">What each lane carries.</param>
/// <param name="Possible">Whether it exists at all.</param>
/// <param name="Condition">What must hold; empty when nothing beyond its existence.</param>
/// <param name="Source">Who says so.</param>
public sealed record CageMode(
    int Ways, BitRate Rate, int LanesPerPort, LaneSignal Signal, bool Possible, string Condition, Citation Source);
