using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Coherent channels over a line in one scheme. What does not depend on the launch is worked out once, so that a launch costs a
/// few operations a channel.</summary>
internal sealed class CoherentTrial
{
    /// <summary>How far below its highest a launch is looked for.</summary>
    private const double Range = 30;

    private const int Narrowings = 14;

    /// <summary>How far around where two noises put it the best launch is looked for first: a decibel to each side, in tenths, as two
    /// neighbours of Fibonacci's row.</summary>
    private static readonly (int Wide, int Narrow) Around = (21, 13);

    private const double TenthsInDecibel = 10;
    private const int Shares = 4;

    private readonly LineQuestion question;
    private readonly WavelengthType type;
    private readonly LineEquipment have;
    private readonly ImmutableArray<CombNoise> hops;
    private readonly Frequency width;
    private readonly double perReference;
    private readonly double transmitterNoise;
    private readonly CombShape flat;
    private readonly Decibels fixedPenalty;
    private readonly double[] dispersionPenalty;
    private readonly double[] fixedFactor;
    private readonly double[] offsets;
    private readonly double[] room;

    /// <summary>Takes what is asked, the type, and the stretches between amplifiers.</summary>
    public CoherentTrial(
        LineQuestion question, WavelengthType type, LineScheme scheme, ImmutableArray<CombNoise> hops, LinePenalties penalties,
        PowerLevel transmitter, Frequency width)
    {
        (this.question, this.type, this.hops, this.width) = (question, type, hops, width);
        have = question.Equipment;
        HasBooster = scheme is LineScheme.Booster or LineScheme.BoosterAndPreamplifier or LineScheme.InLine;
        HasPreamplifier = scheme is LineScheme.Preamplifier or LineScheme.BoosterAndPreamplifier or LineScheme.InLine;
        Transmitter = transmitter;
        // Behind a booster channels are levelled to the launch, whatever each transmitter sends.
        Spread = !HasBooster && type.StrongestOf(transmitter) is { } strongest ? strongest - transmitter : default;
        Reference = question.Standards.Grid.ReferenceWidth.Value;
        perReference = width.Hertz / Reference.Hertz;
        var ownOsnr = question.TransmitterOsnr ?? type.TransmitterOsnr?.Value;
        transmitterNoise = ownOsnr is { } osnr ? 1 / osnr.Ratio : 0;
        (fixedPenalty, Reserve) = (penalties.OfAll, penalties.Reserve);
        dispersionPenalty = penalties.OfDispersion;
        fixedFactor = [.. dispersionPenalty.Select(d => (fixedPenalty + Decibels.From(d)).Ratio)];
        var all = question.Channels.Channels;
        offsets = [.. all.Select(f => f.Terahertz - ((all[0].Terahertz + all[^1].Terahertz) / 2))];
        room = new double[Count];
        flat = new CombShape(default, Count, hops);
    }

    /// <summary>Whether an amplifier stands behind the transmitters.</summary>
    public bool HasBooster { get; }

    /// <summary>Whether an amplifier stands before the receivers.</summary>
    public bool HasPreamplifier { get; }

    /// <summary>Lowest level of a transmitter.</summary>
    public PowerLevel Transmitter { get; }

    /// <summary>The most that penalties may take which are known at one point only.</summary>
    public Decibels Reserve { get; }

    /// <summary>How much more the strongest transmitter sends than the lowest, as far as it is felt at the receivers.</summary>
    public Decibels Spread { get; }

    /// <summary>The width that noise is told in.</summary>
    public Frequency Reference { get; }

    private int Count => question.Channels.Channels.Length;

    /// <summary>Levels and noises at the best launch, tilted as far as it helps and the booster can.</summary>
    public CombState Best()
    {
        var launch = BestLaunch();
        var flatState = At(launch, flat);
        if (!HasBooster || have.Booster?.TiltMax is not { } most || Count == 1) return flatState;
        // Behind the first stretch it is the amplifiers between that launch.
        if (hops.Length > 1 && have.InLine?.TiltMax is null) return flatState;
        var taken = Decibels.From(flatState.HopTilts.Max(t => t.Whole.Value));
        var (best, worth) = (flatState, Worth(flatState));
        // A tilt below what amplifiers are set in is none.
        for (var share = 1; share <= Shares && taken.Value > CombShape.LeastTilt; share++)
        {
            var tilt = Decibels.Min(taken * ((double)share / Shares), most.Value);
            var state = At(launch, new CombShape(tilt, Count, hops));
            if (Worth(state) is var here && here > worth) (best, worth) = (state, here);
        }
        return question.Launch is null && best.Shape != flat ? Climbed(best) : best;
    }

    /// <summary>The best launch was found for a flat comb; a tilted one may have another, a few tenths away.</summary>
    private CombState Climbed(CombState state)
    {
        var (highest, worth) = (Highest(Transmitter - question.MultiplexerLoss), Worth(state));
        foreach (var step in new[] { 1 / TenthsInDecibel, -1 / TenthsInDecibel })
        {
            var start = state;
            while (state.Launch + Decibels.From(step) is var launch && launch <= highest
                && At(launch, state.Shape) is var next && Worth(next) is var here && here > worth)
                (state, worth) = (next, here);
            // What was climbed lies behind, and is lower.
            if (state != start) break;
        }
        return state;
    }

    /// <summary>The launch that leaves the smallest margin largest; that of the transmitters where nothing stands behind them.</summary>
    private PowerLevel BestLaunch()
    {
        var unamplified = Transmitter - question.MultiplexerLoss;
        if (!HasBooster) return unamplified;
        if (question.Launch is { } asked) return asked;
        var highest = Highest(unamplified).Dbm;
        // Amplifiers are set in tenths.
        if (NearSummit(highest) is { } summit) return Tenths(summit);
        var below = (int)Math.Floor(Best(highest - Range, highest, Narrowings) * TenthsInDecibel);
        var (lower, upper) = (Tenths(below), Tenths(below + 1));
        return upper.Dbm <= highest && Worth(upper) > Worth(lower) ? upper : lower;
    }

    /// <summary>Where what amplifiers add falls with the launch and what the glass adds rises with its square, the best is known but for
    /// what else counts, so it is looked for nearby; null where it is not found there.</summary>
    private int? NearSummit(double highest)
    {
        var (strong, weak) = (At(PowerLevel.FromDbm(highest), flat), At(PowerLevel.FromDbm(highest - (TenthsInDecibel / 2)), flat));
        var worst = Enumerable.Range(0, Count).MaxBy(strong.Noise);
        var falling = (weak.Amplified(worst) - strong.Amplified(worst)) / ((1 / weak.LaunchWatts) - (1 / strong.LaunchWatts));
        if (falling <= 0) return null;
        var perCube = strong.NonlinearInReference(worst) / Squares.Of(strong.LaunchWatts);
        var summit = PowerLevel.FromWatts(NonlinearNoise.BestWatts(falling, perCube)).Dbm;
        var (low, top) = ((int)Math.Round(summit * TenthsInDecibel) - (Around.Wide / 2), (int)Math.Floor(highest * TenthsInDecibel));
        if (low + 1 > top) return null;
        var found = BestTenth(low, top);
        // At an edge it may lie beyond.
        return found > low + 1 && (found == top || found < low + Around.Wide - 1) ? found : null;
    }

    /// <summary>The tenth of a decibel above one and up to the highest where the worth is greatest, nearer than
    /// <see cref="Around"/>: one new level a step.</summary>
    private int BestTenth(int low, int top)
    {
        var (wide, narrow) = Around;
        var (atLeft, atRight) = (WorthOf(low + wide - narrow), WorthOf(low + narrow));
        while (true)
        {
            var isRight = atLeft < atRight;
            if (isRight) low += wide - narrow;
            (wide, narrow) = (narrow, wide - narrow);
            if (wide <= 2) return low + 1;
            (atLeft, atRight) = isRight ? (atRight, WorthOf(low + narrow)) : (WorthOf(low + wide - narrow), atLeft);
        }

        double WorthOf(int tenth) => tenth > top ? double.NegativeInfinity : Worth(Tenths(tenth));
    }

    private static PowerLevel Tenths(int tenths) => PowerLevel.FromDbm(tenths / TenthsInDecibel);

    /// <summary>Where between two levels the worth is greatest: it rises to one summit and falls, so the golden section finds it, with
    /// one new level a step.</summary>
    private double Best(double low, double high, int narrowings)
    {
        var golden = (Math.Sqrt(4 + 1) - 1) / 2;
        var (left, right) = (high - (golden * (high - low)), low + (golden * (high - low)));
        var (atLeft, atRight) = (Worth(PowerLevel.FromDbm(left)), Worth(PowerLevel.FromDbm(right)));
        for (var step = 0; step < narrowings; step++)
        {
            if (atLeft < atRight)
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (golden * (high - low));
                atRight = Worth(PowerLevel.FromDbm(right));
            }
            else
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (golden * (high - low));
                atLeft = Worth(PowerLevel.FromDbm(left));
            }
        }
        return (low + high) / 2;
    }

    /// <summary>The highest launch that the booster has output and gain for.</summary>
    private PowerLevel Highest(PowerLevel input)
    {
        var highest = input + Decibels.From(Range);
        if (have.Booster?.OutputMax is { } output) highest = PowerLevel.Min(highest, output.Value.OfEach(Count));
        return have.Booster?.GainMax is { } gain ? PowerLevel.Min(highest, input + gain.Value) : highest;
    }

    /// <summary>The smallest margin at a launch, with what is missing at the receiver taken off many times over: power comes
    /// first.</summary>
    private double Worth(PowerLevel launch) => Worth(At(launch, flat));

    private double Worth(CombState state)
    {
        const double weight = 100;
        // One logarithm for all: a penalty is a factor of the noise.
        var most = 0.0;
        for (var i = 0; i < Count; i++)
        {
            var noise = state.Noise(i) * fixedFactor[i];
            if (!type.RxPenalties.IsEmpty) noise *= type.RxPenalties.At(state.Received(i).Dbm).Ratio;
            most = Math.Max(most, noise);
        }
        var worth = -Decibels.OfRatio(most).Value;
        var floor = type.RxMin?.Value.Dbm ?? double.NegativeInfinity;
        var above = state.LowestReceived.Dbm - floor;
        // The last decibel above the floor counts like one of signal over noise: the smallest of all margins is what is made large.
        return worth - (weight * Math.Max(0, -above)) - Math.Clamp(1 - above, 0, 1);
    }

    /// <summary>Levels and noises at a launch.</summary>
    private CombState At(PowerLevel launch, CombShape shape)
    {
        var amplifiers = ImmutableArray.CreateBuilder<LineAmplifier>();
        var state = new CombState(Count, transmitterNoise, perReference, shape);
        var level = Transmitter - question.MultiplexerLoss;
        if (HasBooster && have.Booster is { } booster)
            level = Amplify(state, amplifiers, Set("booster", booster, level, launch), null);
        state.LaunchWatts = level.Watts;
        for (var hop = 0; hop < hops.Length; hop++)
        {
            var watts = level.Watts;
            var tilt = hops[hop].Tilt(watts * Count, question.Channels.Width);
            state.AddNonlinear(hop, watts, room);
            var before = level;
            level -= hops[hop].Loss;
            state.Tilt += tilt.Whole;
            state.HopTilts.Add(tilt);
            if (hop < hops.Length - 1 && have.InLine is { } inLine)
            {
                level = Amplify(state, amplifiers, Set($"in-line {Numerals.Whole(hop + 1)}", inLine, level, before), tilt);
            }
            else if (HasPreamplifier && have.Preamplifier is { } preamplifier)
            {
                level = Amplify(state, amplifiers, Set("preamplifier", preamplifier, level, null), tilt);
            }
        }
        state.Finish(level - question.MultiplexerLoss, type.RxMax?.Value - Spread, offsets);
        state.Amplifiers = amplifiers.ToImmutable();
        state.Launch = launch;
        return state;
    }

    /// <summary>An amplifier as it is set, with a pad before it where more arrives than it bears; a preamplifier's output follows from
    /// what comes in.</summary>
    private LineAmplifier Set(string place, AmplifierModel model, PowerLevel arriving, PowerLevel? output)
    {
        var before = LineAmplifier.Before(model, arriving + Spread, Count);
        return LineAmplifier.Set(place, model, arriving, output ?? Wanted(model, arriving - before), before);
    }

    /// <summary>Penalties of a channel: low receive power by the level it has, the others by the line.</summary>
    public Decibels PenaltyOf(CombState state, int channel) =>
        fixedPenalty + Decibels.From(dispersionPenalty[channel]) + type.RxPenalties.At(state.Received(channel).Dbm);

    /// <summary>Nonlinear noise over signal with symbols as they are, for a line of one stretch.</summary>
    public static double ExpectedNonlinear(CombState state, int channel, double excessKurtosis) =>
        state.Shape.Expected(0, channel, state.LaunchWatts, NonlinearNoise.CrossShare(excessKurtosis));

    /// <summary>Nonlinear noise over signal of several stretches, each by itself.</summary>
    public double ApartNonlinear(CombState state, int channel) =>
        Enumerable.Range(0, hops.Length).Sum(hop => state.Shape.Apart(hop, channel, state.LaunchWatts));

    /// <summary>Stretches between amplifiers.</summary>
    public int Stretches => hops.Length;

    /// <summary>How far a channel is from the middle of the comb, in terahertz.</summary>
    public double Offset(int channel) => offsets[channel];

    /// <summary>The level of a preamplifier's output: the usual one, unless the receiver's window or its own highest output says
    /// otherwise.</summary>
    private PowerLevel Wanted(AmplifierModel preamplifier, PowerLevel input)
    {
        var wanted = have.PreferredOutput.Value;
        if (type.RxPenalties.Steps is [var (free, _), ..] && type.RxPenalties.IsFloor)
            wanted = PowerLevel.Max(wanted, PowerLevel.FromDbm(free) + question.MultiplexerLoss + Decibels.From(1));
        // Gain that is there anyway is no reason for a pad, as long as the receivers bear it.
        if (preamplifier.GainMin is { } lowest) wanted = PowerLevel.Max(wanted, input + lowest.Value);
        if (type.RxMin is { } least) wanted = PowerLevel.Max(wanted, least.Value + question.MultiplexerLoss + Decibels.From(1));
        if (type.RxMax is { } most) wanted = PowerLevel.Min(wanted, most.Value + question.MultiplexerLoss - Decibels.From(1) - Spread);
        if (preamplifier.OutputMax is { } output) wanted = PowerLevel.Min(wanted, output.Value.OfEach(Count) - Spread);
        if (preamplifier.GainMax is { } gain) wanted = PowerLevel.Min(wanted, input + gain.Value);
        return wanted;
    }

    private PowerLevel Amplify(CombState state, ImmutableArray<LineAmplifier>.Builder amplifiers, LineAmplifier set, RamanTilt? tilt)
    {
        amplifiers.Add(set);
        var plain = set.Input.Watts;
        var noise = set.Model.Figure is { } figure
            ? AmplifierNoise.AtInput(figure.Value, set.Gain, Frequency.FromHertz(1), Reference)
            : 0;
        tilt?.Ratios(offsets, room);
        for (var i = 0; i < Count; i++)
        {
            var watts = plain * (tilt is null ? 1 : room[i] * state.Shape.Ratio(i));
            state.AddAmplified(i, noise > 0
                ? noise * question.Channels.Channels[i].Hertz / watts
                : set.Model.Mask is { } mask ? 1 / AmplifierNoise.ByMask(mask.Value, PowerLevel.FromWatts(watts)).Ratio : 0);
        }
        return set.Output;
    }
}
