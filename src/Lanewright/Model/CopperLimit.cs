using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model;

/// <summary>How long passive copper may be at a rate and above, by the project's own rule.</summary>
/// <param name="Rate">From this rate of the whole assembly.</param>
/// <param name="Most">No longer than this.</param>
/// <param name="Source">Who says so.</param>
public sealed record CopperLimit(BitRate Rate, Length Most, Citation Source);
