using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A point on the way of light, of the channel with the least margin.</summary>
/// <param name="What">What stands before it, such as <c>booster</c> or the name of a span.</param>
/// <param name="At">How far from the transmitter.</param>
/// <param name="Level">Power of the channel there.</param>
/// <param name="OverNoise">Signal over all noise so far, in the reference width; null while nothing adds any.</param>
public sealed record LineStage(string What, Length At, PowerLevel Level, Decibels? OverNoise)
{
    /// <summary>What a pad before an amplifier is called.</summary>
    public const string Pad = "pad";
}
