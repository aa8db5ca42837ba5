using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Turns what a plan says of spans and lines into questions.</summary>
internal static class PlanLines
{
    /// <summary>The question of a line over a way; null where a value it needs is not known.</summary>
    public static LineQuestion? Question(Plan plan, LineStatement line, ImmutableArray<FibreSpan> way)
    {
        var standards = plan.Standards;
        var spans = way.Select(s => Span(standards, s)).ToList();
        var channels = line.First is { } first
            ? ChannelPlan.From(standards.Grid, line.Spacing, first, line.Channels)
            : ChannelPlan.Middle(standards.Grid, line.Spacing, line.Channels);
        if (channels is null || spans.Contains(null)) return null;
        var usual = LineEquipment.Usual(standards);
        return new LineQuestion
        {
            Standards = standards,
            Catalogue = plan.Catalogue,
            Type = line.Type,
            Rate = line.Rate,
            Channels = channels,
            SpacingWhy = line.SpacingWhy,
            Spans = [.. spans.OfType<LineSpan>()],
            Equipment = usual with
            {
                AlwaysMultiplexes = line.MultiplexerLoss is not null,
                MultiplexerLoss = line.MultiplexerLoss is { } loss ? new Known<Decibels>(loss, Citation.OfPlan) : usual.MultiplexerLoss,
                Booster = line.Booster,
                Preamplifier = line.Preamplifier,
                InLine = line.InLine,
            },
            Pairs = way.Min(s => s.Pairs),
            Launch = line.Launch,
            Transmitter = line.Transmitter,
            TransmitterOsnr = line.TransmitterOsnr,
            Pdl = line.Pdl,
            FilterPenalty = line.FilterPenalty,
            LeastMargin = line.LeastMargin,
        };
    }

    private static LineSpan? Span(StandardsLibrary standards, FibreSpan span)
    {
        var attenuation = span.Attenuation is { } stated ? new Known<Attenuation>(stated, Citation.OfPlan) : span.Fibre.Attenuation;
        if (attenuation is not { } loss) return null;
        return new LineSpan
        {
            Name = span.Name,
            MayDivide = span.HasHuts,
            Fibre = span.Fibre,
            Length = span.Length,
            Attenuation = loss,
            MeasuredLoss = span.MeasuredLoss,
            MeasuredDispersion = span.Dispersion,
            MeasuredPmd = span.Pmd,
            Connectors = span.Connectors,
            ConnectorLoss = Stated(span.ConnectorLoss, standards.LineValue("connector", "loss")),
            Splices = span.Splices,
            SpliceLoss = Stated(span.SpliceLoss, standards.LineValue("splice", "loss")),
            Ageing = span.Ageing,
            Repair = LineMargins.Repair(standards, span.Length, span.RepairYears),
        };
    }

    private static Known<Decibels> Stated(Decibels? stated, Known<double> usual) =>
        stated is { } value ? new Known<Decibels>(value, Citation.OfPlan) : usual.As(Decibels.From);
}
