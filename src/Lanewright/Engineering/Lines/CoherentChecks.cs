using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Holds a coherent line against the limits of its type and its amplifiers. A good signal over noise excuses no other
/// limit.</summary>
internal sealed class CoherentChecks(
    LineQuestion question, WavelengthType type, LineScheme scheme, CoherentTrial trial, CombState state,
    ImmutableArray<LineChannel> channels)
{
    /// <summary>The comparisons in their order.</summary>
    public IEnumerable<Check> All() =>
        [Osnr(), Shannon(), .. Reserve(), .. Power(), .. Band(), .. Filtering(), .. LowDispersion(),
            .. state.Amplifiers.SelectMany(Amplifier), .. Levelling(), .. Advice()];

    /// <summary>The last places of a sum are no noise.</summary>
    private const double Rounding = 1e-9;

    private Mark NoiseMark { get; } = question.Spans.Select(s => s.Mark)
        .Append(state.Amplifiers.IsEmpty ? Mark.Seen : state.Amplifiers.Select(a => a.Model.NoiseSource.Mark).Aggregate(Marks.Weaker))
        .Append(question.Multiplexes ? question.Equipment.MultiplexerLoss.Source.Mark : Mark.Seen)
        .Append(question.TransmitterOsnr is null ? type.TransmitterOsnr?.Source.Mark ?? Mark.Weak : Mark.Seen)
        .Append(question.Spans.Select(s => s.Fibre.Gamma?.Source.Mark ?? Mark.Weak).Aggregate(Marks.Weaker))
        .Aggregate(Marks.Weaker);

    private Check Osnr()
    {
        var worst = channels.MinBy(c => c.Margin ?? c.GsnrInReference) ?? channels[0];
        var value = (worst.GsnrInReference - worst.Penalty)?.Value;
        var limit = type.RequiredOsnr?.As(r => (r + question.LeastMargin).Value);
        var penalty = worst.Penalty.Value > 0 ? $" less {worst.Penalty} of penalties" : "";
        var parts = worst.Osnr is { } osnr ? $"amplifiers {Shown(osnr)}, " : "";
        var kept = question.LeastMargin.Value > 0 ? $", {question.LeastMargin} kept" : "";
        if ((question.TransmitterOsnr ?? type.TransmitterOsnr?.Value) is not { } own)
            return Check.Unknown(
                LineCheckNames.Osnr, $"signal over noise of the transmitters of {type.Name} is not known; state it", type.Definition);
        return Check.AtLeast(LineCheckNames.Osnr, value, limit, "dB", NoiseMark) with
        {
            Note = $"worst at {worst.Frequency}: {parts}glass {Shown(worst.OverNonlinear)}, transmitter {Shown(own)}{penalty}{kept}",
        };
    }

    private Check Shannon()
    {
        var least = channels.Min(c => c.OverShannon);
        return Check.AtLeast(LineCheckNames.Shannon, least?.Value, new Known<double>(0, Bound), "dB", NoiseMark) with
        {
            Note = $"{type.Rate} in {type.Baud?.Value}: above the bound that no receiver can pass",
        };
    }

    private static Citation Bound { get; } = new("Shannon", "", "1948", Mark.Derived);

    private IEnumerable<Check> Reserve()
    {
        if (trial.Reserve.Value <= 0 || channels.Min(c => c.Margin) is not { } margin) yield break;
        var kept = question.LeastMargin.Value > 0 ? $", beside {question.LeastMargin} kept" : "";
        var reserve = new Known<double>(trial.Reserve.Value, type.Definition);
        var check = Check.AtLeast(LineCheckNames.Reserve, (margin - question.LeastMargin).Value, reserve, "dB", NoiseMark).OrUnproven();
        var missing = check is { Verdict: Verdict.Unproven, Margin: { } less } ? $"{Numerals.Shown(-less, "dB")} missing: " : "";
        yield return check with
        {
            Note = $"{missing}penalties of delay and polarisation are printed for their largest values only, and may take so much{kept}",
        };
    }

    private IEnumerable<Check> Power()
    {
        var marks = Marks.Weaker(NoiseMark, question.Transmitter is null ? type.TxMin?.Source.Mark ?? Mark.Weak : Mark.Seen);
        if (scheme == LineScheme.Coherent && type.UnamplifiedLossMax is { } budget)
        {
            var loss = question.SpanLoss + (question.MultiplexerLoss * 2);
            // What a transmitter is stated to send less than the least of its type is missing from the budget.
            var missing = Decibels.Max(type.TxMin?.Value - question.Transmitter ?? default, default);
            yield return Check.AtMost(LineCheckNames.UnamplifiedLoss, loss.Value, budget.As(b => (b - missing).Value), "dB", NoiseMark) with
            {
                Note = question.Multiplexes ? "with both multiplexers" : "",
            };
            // What transmitters send at least without amplifiers no standard prints; the budget holds for it, and a level that is stated
            // is followed to the receiver.
            if (question.Transmitter is not null)
                yield return Check.AtLeast(
                    LineCheckNames.ReceiveLow, state.LowestReceived.Dbm, (type.RxMinAtHighOsnr ?? type.RxMin)?.As(l => l.Dbm),
                    CheckUnits.Average, marks);
            if (type.HighOsnr is { } quiet && type.RxMin is { } usual && usual.Value > state.LowestReceived)
                yield return Check.AtLeast(
                    LineCheckNames.TransmitterOsnr, (question.TransmitterOsnr ?? type.TransmitterOsnr?.Value)?.Value,
                    quiet.As(q => q.Value), "dB",
                    question.TransmitterOsnr is null ? type.TransmitterOsnr?.Source.Mark ?? Mark.Weak : Mark.Seen) with
                {
                    Note = $"what the receivers need where less than {usual.Value} arrives",
                };
        }
        else
        {
            var floor = type.RxMin;
            // Light over the noise of amplifiers and transmitter: what the glass adds is no noise a receiver is specified by.
            var most = Enumerable.Range(0, channels.Length).Max(i => state.Amplified(i) + state.TransmitterNoise);
            if (type.RxMinAtHighOsnr is { } lower && type.HighOsnr is { } high && most > 0 && most * high.Value.Ratio <= 1 + Rounding)
                floor = lower;
            yield return Check.AtLeast(
                LineCheckNames.ReceiveLow, state.LowestReceived.Dbm, floor?.As(l => l.Dbm), CheckUnits.Average, marks);
        }
        yield return Check.AtMost(
            LineCheckNames.ReceiveHigh, Strongest?.Dbm, type.RxMax?.As(l => l.Dbm), CheckUnits.Average, marks) with
        {
            Note = string.Join(", ", new[]
            {
                state.ReceiverPad.Value > 0 ? $"with a pad of {state.ReceiverPad} before the receiver" : "",
                trial.Spread.Value > 0 ? OfStrongest : "",
            }.Where(n => n.Length > 0)),
        };
    }

    /// <summary>Without a booster the strongest transmitter decides, whatever is stated of the weakest, and an amplifier's gain is the same
    /// for both; null where nobody says how strong that is.</summary>
    private PowerLevel? Strongest => trial.HasBooster || type.StrongestOf(question.Transmitter) is not null
        ? state.HighestReceived + trial.Spread
        : null;

    /// <summary>What leaves an amplifier at most, before the pad behind it, all channels together.</summary>
    private PowerLevel Total(LineAmplifier amplifier) => (amplifier.Output + amplifier.Pad + trial.Spread).OfAll(channels.Length);

    private const string OfStrongest = "from the strongest transmitters";

    private IEnumerable<Check> Band()
    {
        var all = question.Channels.Channels;
        yield return Check.AtLeast(LineCheckNames.BandLow, all[0].Terahertz, type.FrequencyMin?.As(f => f.Terahertz), "THz");
        yield return Check.AtMost(LineCheckNames.BandHigh, all[^1].Terahertz, type.FrequencyMax?.As(f => f.Terahertz), "THz");
        if (type.SpacingMin is { } least)
            yield return Check.AtLeast(LineCheckNames.Spacing, question.Channels.Spacing.Gigahertz, least.As(f => f.Gigahertz), "GHz");
        else if (all.Length > 1)
            yield return Check.AtLeast(LineCheckNames.Spacing, question.Channels.Spacing.Gigahertz,
                type.Baud?.As(b => b.Gigabaud), "GHz") with
            { Note = "channels lie side by side only where the spacing is not below the symbol rate" };
    }

    /// <summary>Channels that lie as their type plans them, or whose spectrum fits between their neighbours, lose nothing to filters but
    /// what the table of the type says. What a filter takes from a wider one depends on its shape, and no standard prints one.</summary>
    private IEnumerable<Check> Filtering()
    {
        if (channels.Length == 1 && !question.Multiplexes) yield break;
        var slot = question.Channels.Spacing.Gigahertz;
        if (question.FilterPenalty is { } stated)
            yield return Check.Of(
                LineCheckNames.Filtering, true, Citation.OfPlan, $"{stated} of penalty are stated and taken from the margin");
        else if (type.SpacingPlanned is { } planned)
        {
            // Below the least spacing another check fails already.
            if (slot < planned.Value.Gigahertz && type.SpacingMin is null) yield return Wider(slot);
            else if (slot >= planned.Value.Gigahertz)
                yield return Check.AtLeast(LineCheckNames.Filtering, slot, planned.As(p => p.Gigahertz), "GHz") with
                {
                    Note = "channels as the type plans them"
                        + (type.FilterPenalties.At(slot) is { Value: > 0 } penalty ? $", {penalty} of penalty for multiplexers" : ""),
                };
        }
        else if (type.Occupied is { } width && slot >= width.Value.Gigahertz)
            yield return Check.AtLeast(LineCheckNames.Filtering, slot, width.As(w => w.Gigahertz), "GHz") with
            {
                Note = "the spectrum fits into its channel",
            };
        else yield return Wider(slot);
    }

    private Check Wider(double slot) => Check.Unknown(
        LineCheckNames.Filtering,
        type.Occupied is { } width
        ? $"a spectrum {Shown(width.Value)} wide, what the laser may be off with it, in channels of {Numerals.Shown(slot, "GHz")}: what "
            + "multiplexers cut from it and neighbours add is printed nowhere; space them wider, or state it with filter-penalty"
        : $"how wide the spectrum of {type.Name} is is not known; state what multiplexers take from it with filter-penalty",
        type.Definition);

    private static string Shown(Frequency width) => Numerals.Shown(width.Gigahertz, "GHz");

    private IEnumerable<Check> Amplifier(LineAmplifier amplifier)
    {
        var mark = NoiseMark;
        var pads = string.Concat(amplifier.Pads.Select(p => $", pad of {Shown(p.Loss)} {p.Side} it"));
        var strong = trial.Spread.Value > 0 ? ", " + OfStrongest : "";
        yield return Check.AtMost(
            LineCheckNames.Gain, amplifier.Gain.Value, amplifier.Model.GainMax?.As(g => g.Value), "dB", mark) with
        { Note = amplifier.Place + pads };
        yield return Check.AtMost(
            LineCheckNames.Output, Total(amplifier).Dbm, amplifier.Model.OutputMax?.As(o => o.Dbm), CheckUnits.Average, mark) with
        { Note = $"{amplifier.Place}, all channels together{strong}" };
        if (amplifier.Model.Mask is null) yield break;
        yield return Check.AtLeast(
            LineCheckNames.InputLow, amplifier.Input.Dbm, amplifier.Model.InputMin?.As(l => l.Dbm), CheckUnits.Average, mark) with
        { Note = amplifier.Place };
        yield return Check.AtMost(
            LineCheckNames.InputHigh, (amplifier.Input + trial.Spread).Dbm, amplifier.Model.InputMax?.As(l => l.Dbm), CheckUnits.Average,
            mark) with
        { Note = amplifier.Place + strong };
    }

    /// <summary>Amplifiers between spans are taken to level the comb behind their stretch: as much as they can.</summary>
    private IEnumerable<Check> Levelling()
    {
        if (channels.Length == 1 || state.HopTilts.Count < 2 || question.Equipment.InLine is not { } inLine) yield break;
        var most = state.HopTilts.SkipLast(1).Max(t => Math.Abs(t.Whole.Value));
        if (most <= CombShape.LeastTilt) yield break;
        yield return Check.AtMost(LineCheckNames.Tilt, most, inLine.TiltMax?.As(t => t.Value), "dB", NoiseMark) with
        {
            Note = "the most that an in-line amplifier has to level behind its stretch",
        };
    }

    /// <summary>Where light hardly spreads, channels mix over the whole span and more than the closed form says.</summary>
    private IEnumerable<Check> LowDispersion()
    {
        var least = question.Spans.Min(LeastDispersion);
        var limit = question.Standards.LineValue("span", "dispersion-min-closed-form");
        if (least >= limit.Value) yield break;
        yield return Check.AtLeast(LineCheckNames.LowDispersion, least, limit, "ps/nm/km").OrUnproven() with
        {
            Note = "the closed form of nonlinear noise was not proven on glass with so little dispersion",
        };
    }

    /// <summary>Of all channels, without its sign: over wavelengths it is a straight line.</summary>
    private double LeastDispersion(LineSpan span)
    {
        if (span.Glass is not { } glass || (span.MeasuredDispersion ?? span.Fibre.Dispersion?.Value) is not { } rate)
            return double.PositiveInfinity;
        var (one, other) = (At(channels[0]), At(channels[^1]));
        return one * other <= 0 ? 0 : Math.Min(Math.Abs(one), Math.Abs(other));

        double At(LineChannel channel) =>
            glass.DispersionAt(rate, channel.Frequency.Wavelength).PicosecondsPerNanometre / span.Length.Kilometres;
    }

    private IEnumerable<Check> Advice()
    {
        // Where a type plans channels so close, its definition has seen to neighbours and filters.
        var isPlanned = type.SpacingPlanned is { } planned && question.Channels.Spacing >= planned.Value;
        if (channels.Length > 1 && !isPlanned && type.Baud is { } baud && type.RollOff is { } roll)
        {
            var clear = ChannelBounds.Clearance(question.Channels.Spacing, baud.Value, roll.Value, type.LaserError?.Value ?? default);
            yield return Check.AtLeast(LineCheckNames.Clearance, clear, new Known<double>(0, roll.Source), "GHz") with
            {
                IsAdvice = true,
                Note = "between the edge of the spectrum and the edge of the channel; below nothing neighbours touch or filters cut",
            };
        }
        var shortest = question.Standards.LineValue("span", "loss-min-closed-form");
        var least = Stretches.Of(question.Spans, scheme).Min(Stretches.Loss);
        if (least.Value < shortest.Value)
            yield return Check.AtLeast(LineCheckNames.ShortSpan, least.Value, shortest, "dB") with
            {
                IsAdvice = true,
                Note = "the closed form of nonlinear noise was not proven on so short a span",
            };
        yield return LineLight.Of(
            question, type.StrongestOf(question.Transmitter),
            state.Amplifiers.Select(Total));
    }

    private static string Shown(Decibels? value) => value is { } v ? Numerals.Unit(Math.Round(v.Value, 2), "dB") : "not known";
}
