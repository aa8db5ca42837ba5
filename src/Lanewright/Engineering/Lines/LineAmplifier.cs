using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>An amplifier of a line as it is set.</summary>
/// <param name="Place">Where: <c>booster</c>, <c>preamplifier</c> or <c>in-line 1</c> and so on.</param>
/// <param name="Model">What it is.</param>
/// <param name="Input">Level of a channel that comes in, behind the pad before it.</param>
/// <param name="Output">Level of a channel that goes on, behind the pad.</param>
/// <param name="Gain">Its gain.</param>
/// <param name="Pad">A pad behind it that takes what the lowest gain is too much; zero for none.</param>
/// <param name="PadBefore">A pad before it that takes what arrives too strong; zero for none.</param>
public sealed record LineAmplifier(
    string Place, AmplifierModel Model, PowerLevel Input, PowerLevel Output, Decibels Gain, Decibels Pad, Decibels PadBefore)
{
    /// <summary>Whether it stands between the ends of the line.</summary>
    public bool IsBetween => Place.StartsWith("in-line", StringComparison.Ordinal);

    /// <summary>What it is called in a sentence.</summary>
    public string Words => IsBetween ? Place.Replace("in-line", "in-line amplifier", StringComparison.Ordinal) : $"the {Place}";

    /// <summary>The pads of it that there are, the one before it first.</summary>
    public IEnumerable<(Decibels Loss, string Side)> Pads =>
        new[] { (Loss: PadBefore, Side: "before"), (Loss: Pad, Side: "behind") }.Where(p => p.Loss.Value > 0);

    /// <summary>Sets an amplifier to bring a level to another.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="model">What it is.</param>
    /// <param name="arriving">Level of a channel that arrives.</param>
    /// <param name="output">Level of a channel that is to go on.</param>
    /// <param name="before">The pad before it.</param>
    public static LineAmplifier Set(
        string place, AmplifierModel model, PowerLevel arriving, PowerLevel output, Decibels before = default)
    {
        var needed = output - (arriving - before);
        var gain = model.GainMin is { } least ? Decibels.Max(needed, least.Value) : needed;
        return new LineAmplifier(place, model, arriving - before, output, gain, gain - needed, before);
    }

    /// <summary>The pad that has to stand before an amplifier: what is more than it takes in, or than its lowest gain can bring
    /// out. A pad behind it costs no signal over noise, so that no more is taken before.</summary>
    /// <param name="model">The amplifier.</param>
    /// <param name="strongest">The most of a channel that arrives.</param>
    /// <param name="channels">How many do.</param>
    public static Decibels Before(AmplifierModel model, PowerLevel strongest, int channels)
    {
        var excess = default(Decibels);
        if (model.InputMax is { } most) excess = Decibels.Max(excess, strongest - most.Value);
        if (model is { OutputMax: { } output, GainMin: { } gain })
            excess = Decibels.Max(excess, strongest + gain.Value - output.Value.OfEach(channels));
        return excess;
    }
}
