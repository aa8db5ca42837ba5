using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Levels and noises of all channels at the receivers, for one launch. Noises are shares of the signal; those of amplifiers and
/// transmitters in the reference width, those of the glass in the width of a channel.</summary>
internal sealed class CombState(int channels, double transmitterNoise, double widthPerReference, CombShape shape)
{
    private readonly double[] amplified = new double[channels];
    private readonly double[] nonlinear = new double[channels];
    private readonly double[] received = new double[channels];

    /// <summary>The amplifiers as they are set.</summary>
    public ImmutableArray<LineAmplifier> Amplifiers { get; set; } = [];

    /// <summary>Launch into the fibre.</summary>
    public PowerLevel Launch { get; set; }

    /// <summary>Power of a channel where the fibre begins, in watts.</summary>
    public double LaunchWatts { get; set; }

    /// <summary>Raman tilt of the whole line.</summary>
    public Decibels Tilt { get; set; }

    /// <summary>Raman tilt of each stretch.</summary>
    public List<RamanTilt> HopTilts { get; } = [];

    /// <summary>How the launch is spread over the comb.</summary>
    public CombShape Shape => shape;

    /// <summary>Attenuator before each receiver.</summary>
    public Decibels ReceiverPad { get; private set; }

    /// <summary>The lowest level at a receiver.</summary>
    public PowerLevel LowestReceived => PowerLevel.FromDbm(received.Min());

    /// <summary>The highest level at a receiver.</summary>
    public PowerLevel HighestReceived => PowerLevel.FromDbm(received.Max());

    /// <summary>Adds noise of an amplifier.</summary>
    public void AddAmplified(int channel, double share) => amplified[channel] += share;

    /// <summary>Adds noise of a stretch of glass.</summary>
    /// <param name="hop">The stretch.</param>
    /// <param name="watts">Mean launch into it.</param>
    /// <param name="room">As many places as channels, whose values are lost.</param>
    public void AddNonlinear(int hop, double watts, Span<double> room) => shape.AddPlain(hop, watts, nonlinear, room);

    /// <summary>Noise of amplifiers.</summary>
    public double Amplified(int channel) => amplified[channel];

    /// <summary>Noise of the glass in the width of a channel.</summary>
    public double Nonlinear(int channel) => nonlinear[channel];

    /// <summary>Width of a channel over the width that noise is told in.</summary>
    public double WidthPerReference => widthPerReference;

    /// <summary>Noise of the transmitter.</summary>
    public double TransmitterNoise => transmitterNoise;

    /// <summary>Noise of the glass in the reference width.</summary>
    public double NonlinearInReference(int channel) => nonlinear[channel] / widthPerReference;

    /// <summary>All noise in the reference width.</summary>
    public double Noise(int channel) => amplified[channel] + transmitterNoise + (nonlinear[channel] / widthPerReference);

    /// <summary>Level at the receiver.</summary>
    public PowerLevel Received(int channel) => PowerLevel.FromDbm(received[channel]);

    /// <summary>Sets the levels at the receivers, with a pad where the strongest would be too strong.</summary>
    public void Finish(PowerLevel level, PowerLevel? most, double[] offsets)
    {
        for (var i = 0; i < channels; i++)
            received[i] = level.Dbm + shape.Levels[i] + (HopTilts.Count > 0 ? HopTilts[^1].At(offsets[i]).Value : 0);
        if (most is not { } limit || received.Max() <= limit.Dbm) return;
        ReceiverPad = Decibels.From(Math.Ceiling(received.Max() - limit.Dbm));
        for (var i = 0; i < channels; i++) received[i] -= ReceiverPad.Value;
    }
}
