using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>A single span as cases describe it: transmitter, multiplexer, launch and noise figure of the booster, loss, noise figure and
/// output of the preamplifier, demultiplexer, channels, signal over noise of the transmitter.</summary>
internal static class SpanCase
{
    private static readonly StandardsLibrary Standards = StandardsLibrary.Shipped;

    /// <summary>Signal over amplifier noise and power at the receiver, put together from the stages of this program.</summary>
    public static (double Osnr, double Received) Of(JsonElement[] a)
    {
        double? At(int i) => i < a.Length && a[i].ValueKind == JsonValueKind.Number ? a[i].GetDouble() : null;
        var noise = Frequency.FromGigahertz(12.5);
        var carrier = Frequency.FromTerahertz(193.4);
        var stages = new List<Decibels>();
        if (At(9) is { } sent) stages.Add(Decibels.From(sent));
        var level = PowerLevel.FromDbm(At(0) ?? 0) - Decibels.From(At(1) ?? 0);
        Amplify(At(2), At(3));
        level -= Decibels.From(At(4) ?? 0);
        Amplify(At(6), At(5));
        return (AmplifierNoise.Together(stages).Value, (level - Decibels.From(At(7) ?? 0)).Dbm);

        void Amplify(double? output, double? figure)
        {
            if (output is not { } to || figure is not { } noisy) return;
            var model = Standards.Amplifier("EDFA")!.With(Decibels.From(noisy)) with { GainMin = null };
            var set = LineAmplifier.Set("here", model, level, PowerLevel.FromDbm(to));
            stages.Add(AmplifierNoise.Over(set.Input, Decibels.From(noisy), set.Gain, carrier, noise));
            level = set.Output;
        }
    }

    /// <summary>A span of G.652.D.</summary>
    public static LineSpan Span(double kilometres, double lossPerKilometre) => new()
    {
        MayDivide = true,
        Fibre = Standards.LineFibre("G.652.D")!,
        Length = Length.FromKilometres(kilometres),
        Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(lossPerKilometre), Citation.OfPlan),
        ConnectorLoss = new Known<Decibels>(Decibels.From(0.3), Citation.OfPlan),
        SpliceLoss = new Known<Decibels>(Decibels.From(0.1), Citation.OfPlan),
    };

    /// <summary>A question about 400ZR over one span.</summary>
    public static LineQuestion Question(double kilometres, int channels = 8, double spacing = 100, double loss = 0.22) => new()
    {
        Standards = Standards,
        Type = Standards.Wavelength("400ZR"),
        Rate = BitRate.FromGigabits(400),
        Channels = ChannelPlan.Middle(Standards.Grid, Frequency.FromGigahertz(spacing), channels)!,
        Spans = [Span(kilometres, loss)],
        Equipment = LineEquipment.Usual(Standards),
    };
}
