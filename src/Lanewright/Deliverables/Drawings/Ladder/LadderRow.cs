namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>A line of the table beside a ladder.</summary>
/// <param name="What">What costs level.</param>
/// <param name="HowMany">How many, or how long.</param>
/// <param name="Each">What one costs.</param>
/// <param name="Loss">What all of them cost.</param>
/// <param name="Kind">The mark it has on the ladder; null for none.</param>
/// <param name="IsTotal">Whether it sums the lines above.</param>
internal sealed record LadderRow(string What, string HowMany, string Each, string Loss, LadderStepKind? Kind = null, bool IsTotal = false);
