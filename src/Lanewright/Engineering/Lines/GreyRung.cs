using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Grey optics on dark fibre: an interface type of the rate for each channel, each on fibres of its own.</summary>
internal static class GreyRung
{
    /// <summary>The fibre that grey types are made for.</summary>
    private const string Glass = "G.652.D";

    /// <summary>The design with the type that comes nearest.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="only">The type to keep to; null for any of the rate.</param>
    public static LineDesign Of(LineQuestion question, string? only = null)
    {
        question = question with { Spans = [.. question.Spans.Select(s => s with { Farther = default })] };
        var count = question.Channels.Channels.Length;
        var single = question.Standards.InterfaceTypes
            .Where(t => t.Rate == question.Rate && t.FibreKind == FibreKind.SingleMode && !t.IsDraft
                && t.Signal.Modulation is not Modulation.Coherent && (only is null || t.Name == only))
            .ToList();
        var links = question.Standards.Fibre(Glass) is { } fibre && question.Spans.All(s => s.Fibre.Name == Glass)
            ? single.Select(t => (Type: t, Link: SingleLink.OverFibre(question.Standards, ChannelOf(question, fibre, t), t, t))).ToList()
            : [];
        if (links.Count == 0) return Without(question, single.Count > 0
            ? $"grey types are judged on {Glass} alone"
            : $"no grey type of {question.Rate} on single mode is known");
        var best = links.OrderBy(l => l.Type.FibrePairs * count > question.Pairs).ThenBy(l => l.Link.Verdict)
            .ThenBy(l => l.Type.FibrePairs).ThenBy(l => Misses(l.Link))
            .ThenBy(l => ReachOf(l.Type, question) * (l.Link.Verdict == Verdict.Pass ? 1 : -1)).First();
        var needed = best.Type.FibrePairs * count;
        var pairs = Check.AtMost(LineCheckNames.Pairs, needed, new Known<double>(question.Pairs, Citation.OfPlan), "pairs",
            question.Spans.Select(s => s.Mark).Aggregate(Marks.Weaker)) with
        {
            Note = needed > question.Pairs
                ? $"{best.Type.Name} has a pair of fibres for each channel"
                : $"{best.Type.Name} on {Numerals.Whole(needed)} of {Numerals.Whole(question.Pairs)}",
        };
        return new LineDesign
        {
            Scheme = LineScheme.Grey,
            TypeName = best.Type.Name,
            Checks = [pairs, .. best.Link.Checks, LightOf(question, best.Type)],
            Channels = [.. question.Channels.Channels.Select(_ => GreyChannel(best.Type, best.Link))],
            Latency = CoherentLine.LatencyOf(question),
            Spans = At(best.Link, question),
            Stages = LineStages.OfLevels(
                question, best.Type.TxAverageMin?.Value, best.Link.Loss?.Maximum, default, multiplexes: false),
            LowestReceived = best.Type.TxAverageMin?.Value - LossLimit(best.Link),
        };
    }

    /// <summary>The spans with what they lose more at the wavelengths of a link than where losses are told.</summary>
    private static ImmutableArray<LineSpan> At(SingleLink link, LineQuestion question)
    {
        var more = link.Loss?.Maximum - question.SpanLoss;
        if (more is not { Value: > 0 } farther) return question.Spans;
        return [.. question.Spans.Select(s => s with { Farther = farther * (s.Loss.Value / question.SpanLoss.Value) })];
    }

    /// <summary>All wavelengths of one fibre at the most they may send.</summary>
    private static Check LightOf(LineQuestion question, InterfaceType type) =>
        LineLight.Of(question, null, type.TxAverageMax is { } most ? [most.Value.OfAll(type.WavelengthsPerFibre)] : []);

    /// <summary>What the channel of a link may lose; null where no budget is known.</summary>
    private static Decibels? LossLimit(SingleLink link) =>
        link.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss)?.Limit is { } most ? Decibels.From(most) : null;

    private static int Misses(SingleLink link) => link.Checks.Count(c => c.Verdict == Verdict.Fail);

    private static double ReachOf(InterfaceType type, LineQuestion question) =>
        question.Standards.Fibre(Glass) is { } fibre ? type.Reach(fibre)?.Value.Metres ?? 0 : 0;

    private static LineChannel GreyChannel(InterfaceType type, SingleLink link)
    {
        var centre = type.Lanes.IsEmpty ? GlassSpan.Usual : type.Lanes[0].Centre;
        var loss = link.Loss?.Maximum;
        return new LineChannel
        {
            Frequency = Frequency.Of(centre),
            Received = type.TxAverageMin is { } launch && loss is { } lost ? launch.Value - lost : null,
        };
    }

    /// <summary>All spans as one channel. Where any loss was measured the spans are added up one by one; what glass loses more at the
    /// wavelengths of the type than near 1550 nm, where losses of lines are told, is kept back beside ageing and repairs.</summary>
    private static Channel ChannelOf(LineQuestion question, Fibre fibre, InterfaceType type)
    {
        var spans = question.Spans;
        var glass = spans.Sum(s => (s.Attenuation.Value * s.Length).Value);
        var kept = spans.Aggregate(default(Decibels), (sum, s) => sum + s.Ageing + s.Repair);
        var channel = new Channel
        {
            Fibre = fibre,
            Length = question.Length,
            Connections = spans.Sum(s => s.Connectors),
            ConnectionLoss = Mean(spans.Select(s => (s.ConnectorLoss, s.Connectors))),
            Splices = spans.Sum(s => s.Splices),
            SpliceLoss = Mean(spans.Select(s => (s.SpliceLoss, s.Splices))),
            AgeingMargin = kept,
        };
        if (spans.Any(s => s.MeasuredLoss is not null))
        {
            var farther = Decibels.From(spans.Sum(s => Farther(fibre, type) * s.Length.Kilometres));
            return channel with { MeasuredLoss = question.SpanLoss - kept, OtherWavelengths = farther };
        }
        // One question, one fibre: near 1550 nm what other schemes reckon with holds for grey optics too, usual as it may be. What is not
        // stated is not carried to other wavelengths, where the limit of the fibre stands.
        var isStated = spans.All(s => ReferenceEquals(s.Attenuation.Source, Citation.OfPlan));
        if (!isStated && !type.Lanes.All(l => Math.Abs(l.Centre.Nanometres - GlassSpan.Usual.Nanometres) < Window)) return channel;
        var source = spans.Select(s => s.Attenuation.Source).MaxBy(s => s.Mark) ?? Citation.OfPlan;
        return channel with
        {
            Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(glass / question.Length.Kilometres), source),
            AttenuationAt = GlassSpan.Usual,
        };
    }

    /// <summary>Nanometres from where losses are told within which they hold.</summary>
    private const double Window = 40;

    /// <summary>Loss of each, so that all of them together lose what they do.</summary>
    private static Known<Decibels> Mean(IEnumerable<(Known<Decibels> Loss, int Count)> each)
    {
        var all = each.ToList();
        var count = all.Sum(e => e.Count);
        if (count == 0) return all[0].Loss;
        var weakest = all.Where(e => e.Count > 0).MaxBy(e => e.Loss.Source.Mark).Loss;
        return weakest.As(_ => Decibels.From(all.Sum(e => e.Loss.Value.Value * e.Count) / count));
    }

    /// <summary>What a kilometre loses more at the worst wavelength of a type than where losses are told, in dB.</summary>
    private static double Farther(Fibre fibre, InterfaceType type)
    {
        if (fibre.AttenuationAt(GlassSpan.Usual) is not { } usual || type.Lanes.IsEmpty) return 0;
        var there = type.Lanes.Max(l => fibre.AttenuationAt(l.Shortest)?.Value.DecibelsPerKilometre ?? 0);
        return Math.Max(0, there - usual.Value.DecibelsPerKilometre);
    }

    private static LineDesign Without(LineQuestion question, string reason) => new()
    {
        Scheme = LineScheme.Grey,
        TypeName = "",
        Checks = [Check.Of(LineCheckNames.Type, false, null, reason)],
        Channels = ImmutableArray<LineChannel>.Empty,
        Latency = CoherentLine.LatencyOf(question),
        Spans = question.Spans,
    };
}
