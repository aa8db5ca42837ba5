using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>A share and the bounds it lies between: 95 % Clopper-Pearson bounds for a sample, three equal values when it is
/// exact.</summary>
/// <param name="Lower">The lower bound.</param>
/// <param name="Estimate">The share as seen.</param>
/// <param name="Upper">The upper bound.</param>
public readonly record struct ShareInterval(Share Lower, Share Estimate, Share Upper);
