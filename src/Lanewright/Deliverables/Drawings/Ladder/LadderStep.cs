namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>One piece of the way down.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Loss">What it costs, in dB.</param>
/// <param name="Place">Where along the way it lies, from 0 to 1; for a stretch, where it ends.</param>
internal sealed record LadderStep(LadderStepKind Kind, double Loss, double Place);
