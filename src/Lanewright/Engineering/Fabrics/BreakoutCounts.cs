using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Ports of silicon.</summary>
/// <param name="Ports">How many.</param>
/// <param name="Throughput">What they carry together.</param>
/// <param name="LanesUnused">Lanes that reach no port.</param>
public sealed record BreakoutCounts(int Ports, BitRate Throughput, int LanesUnused);
