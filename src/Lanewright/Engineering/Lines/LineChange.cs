using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>A change to a coherent line and the margin it buys.</summary>
/// <param name="What">The change in words.</param>
/// <param name="Gained">What the smallest margin gains.</param>
/// <param name="Cost">What its parts cost more than those of the design, nothing for a setting; null where nobody sells it by that name,
/// or a price is missing.</param>
public sealed record LineChange(string What, Decibels Gained, Money? Cost)
{
    /// <summary>The change that buys most margin for its cost: what costs nothing before all that does; null where no cost is
    /// known.</summary>
    public static LineChange? BestBuy(ImmutableArray<LineChange> changes) => changes
        .Where(c => c.Cost is not null)
        .OrderByDescending(c => c.Cost > Money.Zero ? c.Gained.Value / (double)(c.Cost?.Units ?? 1) : double.PositiveInfinity)
        .ThenByDescending(c => c.Gained).FirstOrDefault();

    /// <summary>The changes that gain, best first; none for a line that is not coherent.</summary>
    /// <param name="answer">The line.</param>
    /// <param name="catalogue">What can be bought.</param>
    public static ImmutableArray<LineChange> Of(LineAnswer answer, Catalogue catalogue)
    {
        var design = answer.Design;
        var question = answer.Question with { Spans = design.Spans };
        if (design.Worst?.Margin is not { } now) return [];
        if (question.Standards.Wavelength(design.TypeName) is not { IsCoherent: true } type) return [];
        var one = Decibels.From(1);
        var changes = ImmutableArray.CreateBuilder<LineChange>();
        Try("a booster 1 dB less noisy", question.Equipment with { Booster = Better(question.Equipment.Booster) });
        Try("a preamplifier 1 dB less noisy", question.Equipment with { Preamplifier = Better(question.Equipment.Preamplifier) });
        Try("in-line amplifiers 1 dB less noisy", question.Equipment with { InLine = Better(question.Equipment.InLine) });
        if (question.Multiplexes && question.MultiplexerLoss > one)
            Try("multiplexers that lose 1 dB less", question.Equipment with
            {
                MultiplexerLoss = question.Equipment.MultiplexerLoss.As(l => l - one),
            });
        Ask("fibre that loses 1 dB less a span", question with { Spans = [.. question.Spans.Select(Clearer)] });
        if (question.Launch is not null) Ask("the best launch", question with { Launch = null }, Money.Zero);
        if (question.Channels.Channels.Length > 1 && ChannelPlan.Middle(question.Standards.Grid, question.Channels.Spacing,
                (question.Channels.Channels.Length + 1) / 2) is { } half)
            Ask("half the channels", question with { Channels = half });
        if (design.Scheme == LineScheme.BoosterAndPreamplifier && question.Spans is [{ MayDivide: true }])
        {
            var piece = question.Spans[0].Piece(2);
            Buy("an in-line amplifier in the middle", question with { Spans = [piece, piece] }, type, LineScheme.InLine);
        }
        foreach (var other in question.Standards.Amplifiers.Where(a => a.Mask is not null))
        {
            if (question.Equipment.Preamplifier is not null && design.Amplifiers.Any(a => a.Place == "preamplifier" && a.Model != other))
                Buy($"{other.Name} as preamplifier", question with { Equipment = question.Equipment with { Preamplifier = other } }, type);
        }
        foreach (var other in question.Standards.WavelengthTypes.Where(t => t.IsCoherent && t.Rate == type.Rate && t.Name != type.Name))
            Buy($"{other.Name} modules", question with { Type = other, Transmitter = null, TransmitterOsnr = null }, other);
        return [.. changes.Where(c => c.Gained.Value > Least).OrderByDescending(c => c.Gained).ThenBy(c => c.What, StringComparer.Ordinal)];

        void Try(string what, LineEquipment equipment) => Ask(what, question with { Equipment = equipment });

        void Ask(string what, LineQuestion asked, Money? cost = null)
        {
            if (CoherentLine.Of(asked, type, design.Scheme).Worst?.Margin is { } then) changes.Add(new LineChange(what, then - now, cost));
        }

        // What is bought has to work: a change that breaks another limit is none.
        void Buy(string what, LineQuestion asked, WavelengthType with, LineScheme? scheme = null)
        {
            var made = CoherentLine.Of(asked, with, scheme ?? design.Scheme);
            if (made.Worst?.Margin is not { } then || made.Verdict == Verdict.Fail) return;
            var (before, after) = (PriceOf(design), PriceOf(made));
            changes.Add(new LineChange(what, then - now, before is { } was && after is { } becomes ? becomes - was : null));
        }

        Money? PriceOf(LineDesign made) => LinePrice.Of(catalogue, made, question.TerminalsOf?.Invoke(made.TypeName))?.Total;
    }

    private const double Least = 0.005;

    private static AmplifierModel? Better(AmplifierModel? model) =>
        model?.Figure is { } figure ? model with { Figure = figure.As(f => f - Decibels.From(1)) } : model;

    private static LineSpan Clearer(LineSpan span) => span.MeasuredLoss is { } measured
        ? span with { MeasuredLoss = Decibels.Max(measured * (1.0 / 2), measured - Decibels.From(1)) }
        : span with
        {
            Attenuation = span.Attenuation.As(a => Attenuation.FromDecibelsPerKilometre(
                Math.Max(a.DecibelsPerKilometre / 2, a.DecibelsPerKilometre - (1 / span.Length.Kilometres)))),
        };
}
