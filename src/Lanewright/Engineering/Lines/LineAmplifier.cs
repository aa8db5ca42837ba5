using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>An amplifier of a line as it is set.</summary>
/// <param name="Place">Where: <c>booster</c>, <c>preamplifier</c> or <c>in-line 1</c> and so on.</param>
/// <param name="Model">What it is.</param>
/// <param name="Input">Level of a channel that comes in.</param>
/// <param name="Output">Level of a channel that goes on, behind the pad.</param>
/// <param name="Gain">Its gain.</param>
/// <param name="Pad">A pad behind it that takes what the lowest gain is too much; zero for none.</param>
public sealed record LineAmplifier(
    string Place, AmplifierModel Model, PowerLevel Input, PowerLevel Output, Decibels Gain, Decibels Pad)
{
    /// <summary>Whether it stands between the ends of the line.</summary>
    public bool IsBetween => Place.StartsWith("in-line", StringComparison.Ordinal);

    /// <summary>Sets an amplifier to bring a level to another.</summary>
    public static LineAmplifier Set(string place, AmplifierModel model, PowerLevel input, PowerLevel output)
    {
        var needed = output - input;
        var gain = model.GainMin is { } least ? Decibels.Max(needed, least.Value) : needed;
        return new LineAmplifier(place, model, input, output, gain, gain - needed);
    }
}
