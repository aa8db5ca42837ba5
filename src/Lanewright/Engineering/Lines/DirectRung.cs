using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Wavelengths that are received directly, without amplifiers: multiplexers, fibre, and what dispersion costs.</summary>
internal static class DirectRung
{
    /// <summary>The design with the first type of the rate that fits, or the last that does not.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="scheme">Coarse or dense.</param>
    /// <param name="only">The type to keep to; null for any of the rate.</param>
    public static LineDesign Of(LineQuestion question, LineScheme scheme, string? only = null)
    {
        if (scheme == LineScheme.CoarseDirect && question.Channels.Channels.Length > question.Standards.Grid.CoarseChannels)
            return Without(question, scheme,
                $"{Numerals.Whole(question.Channels.Channels.Length)} channels, and the coarse grid has "
                + Numerals.Whole(question.Standards.Grid.CoarseChannels));
        var types = question.Standards.WavelengthTypes
            .Where(t => !t.IsCoherent && t.Rate == question.Rate && t.IsCoarse == (scheme == LineScheme.CoarseDirect)
                && (only is null || t.Name == only)).ToList();
        if (types.Count == 0) return Without(question, scheme, Unknown(question, scheme));
        var asked = scheme == LineScheme.CoarseDirect ? Coarse(question) : question;
        var designs = types.Select(t => Judge(asked, scheme, t)).ToList();
        return designs.FirstOrDefault(d => d.Verdict == Verdict.Pass) ?? designs.MinBy(d => d.Verdict) ?? designs[0];
    }

    /// <summary>As many coarse channels, those nearest to where loss is reckoned first, lowest frequency first as everywhere; over
    /// multiplexers made for them, and fibre that loses more where they lie farther away.</summary>
    private static LineQuestion Coarse(LineQuestion question)
    {
        var grid = question.Standards.Grid;
        var nearest = Enumerable.Range(0, grid.CoarseChannels).Select(grid.Coarse)
            .OrderBy(w => Math.Abs(w.Nanometres - GlassSpan.Usual.Nanometres)).Take(question.Channels.Channels.Length);
        var more = question.Standards.LineValue("coarse", "loss-more");
        var usual = question.Standards.LineValue("multiplexer", "coarse-loss").As(Decibels.From);
        var isStated = ReferenceEquals(question.Equipment.MultiplexerLoss.Source, Citation.OfPlan);
        return question with
        {
            Channels = question.Channels with { Channels = [.. nearest.Select(Frequency.Of).Order()] },
            Equipment = isStated ? question.Equipment : question.Equipment with { MultiplexerLoss = usual },
            Spans = [.. question.Spans.Select(s => s with { Farther = Decibels.From(more.Value * s.Length.Kilometres) })],
        };
    }

    private static string Unknown(LineQuestion question, LineScheme scheme)
    {
        var kind = scheme == LineScheme.CoarseDirect ? "coarse" : "dense";
        var rule = question.Standards.LineValue("intensity", "dispersion-rule").Value;
        var most = Math.Sqrt(rule / Math.Max(1, LargestDispersion(question)));
        return $"no {kind} wavelength of {question.Rate} with direct reception is known; two levels without chirp bear about "
            + $"{Numerals.Plain(Math.Round(most, 1))} GBd over this dispersion";
    }

    private static double LargestDispersion(LineQuestion question) => question.Spans.Sum(s =>
        s.DispersionMax is { } d ? Math.Abs((d.Value * s.Length).PicosecondsPerNanometre) : 0);

    private static LineDesign Judge(LineQuestion question, LineScheme scheme, WavelengthType type)
    {
        var penalties = new LinePenalties(question, type, []);
        var loss = question.SpanLoss + (question.MultiplexerLoss * 2);
        var low = (question.Transmitter ?? type.TxMin?.Value) - loss;
        var high = type.StrongestOf(question.Transmitter) - loss;
        var pad = high is { } level && type.RxMax is { } most && level > most.Value
            ? Decibels.From(Math.Ceiling((level - most.Value).Value))
            : default;
        var penalty = penalties.OfAll + Decibels.From(penalties.OfDispersion.Max());
        var mark = question.Spans.Select(s => s.Mark)
            .Append(question.Multiplexes ? question.Equipment.MultiplexerLoss.Source.Mark : Mark.Seen).Aggregate(Marks.Weaker);
        var all = question.Channels.Channels;
        return new LineDesign
        {
            Scheme = scheme,
            TypeName = type.Name,
            Checks =
            [
                Check.AtLeast(LineCheckNames.ReceiveLow, (low - pad)?.Dbm, type.RxMin?.As(l => (l + penalty).Dbm), CheckUnits.Average, mark)
                    with { Note = penalty.Value > 0 ? $"with {penalty} for dispersion" : "" },
                Check.AtMost(LineCheckNames.ReceiveHigh, (high - pad)?.Dbm, type.RxMax?.As(l => l.Dbm), CheckUnits.Average, mark)
                    with { Note = pad.Value > 0 ? $"with a pad of {pad} before the receiver" : "" },
                Check.AtLeast(LineCheckNames.BandLow, all.Min(f => f.Terahertz), type.FrequencyMin?.As(f => f.Terahertz), "THz"),
                Check.AtMost(LineCheckNames.BandHigh, all.Max(f => f.Terahertz), type.FrequencyMax?.As(f => f.Terahertz), "THz"),
                .. Spacing(question, scheme, type),
                penalties.Checks().First(),
                .. penalties.Delays(),
                LineLight.Of(question, type.StrongestOf(question.Transmitter), []),
            ],
            Channels =
            [
                .. question.Channels.Channels.Select((f, i) => new LineChannel
                {
                    Frequency = f, Received = low - pad, Dispersion = penalties.Dispersions[i], Penalty = penalty,
                }),
            ],
            Latency = CoherentLine.LatencyOf(question),
            Spans = question.Spans,
            ReceiverPad = pad,
            Multiplexes = question.Multiplexes,
            Stages = LineStages.OfLevels(question, question.Transmitter ?? type.TxMin?.Value, question.SpanLoss, pad,
                question.Multiplexes),
            LowestReceived = type.RxMin is { } floor ? floor.Value + penalty : null,
        };
    }

    /// <summary>Coarse channels lie where their grid has them.</summary>
    private static IEnumerable<Check> Spacing(LineQuestion question, LineScheme scheme, WavelengthType type)
    {
        if (scheme == LineScheme.CoarseDirect || question.Channels.Channels.Length == 1) yield break;
        yield return Check.AtLeast(
            LineCheckNames.Spacing, question.Channels.Spacing.Gigahertz, type.SpacingMin?.As(f => f.Gigahertz), "GHz");
    }

    private static LineDesign Without(LineQuestion question, LineScheme scheme, string reason) => new()
    {
        Scheme = scheme,
        TypeName = "",
        Checks = [Check.Of(LineCheckNames.Type, false, null, reason)],
        Channels = ImmutableArray<LineChannel>.Empty,
        Latency = CoherentLine.LatencyOf(question),
        Spans = question.Spans,
    };
}
