using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>What a coherent line could carry besides: more channels, or the next rates in the place of these.</summary>
/// <param name="MostChannels">Channels of the same spacing with which the line still works as it is built; those it has where none more
/// do. Multiplexers stand for all of them, also where the line has one channel and none.</param>
/// <param name="HigherRates">Types of higher rates that work over it, one for each channel where spacing allows, widest plan first.</param>
public sealed record LineHeadroom(int MostChannels, ImmutableArray<HigherRate> HigherRates)
{
    /// <summary>The headroom of a design; null for one that does not pass or is not coherent.</summary>
    public static LineHeadroom? Of(LineAnswer answer)
    {
        var design = answer.Design;
        var question = answer.Question with { Spans = design.Spans };
        if (design.Verdict != Verdict.Pass || question.Standards.Wavelength(design.TypeName) is not { IsCoherent: true } type) return null;
        // One channel without multiplexers has no room beside it; more are asked for with them.
        question = question with { Equipment = question.Equipment with { AlwaysMultiplexes = true } };
        return new LineHeadroom(MostOf(question, type, design.Scheme), Higher(question, type, design.Scheme));
    }

    /// <summary>More channels only ever take from the margin, so halving finds the most.</summary>
    private static int MostOf(LineQuestion question, WavelengthType type, LineScheme scheme)
    {
        var grid = question.Standards.Grid;
        var low = question.Channels.Channels.Length;
        var high = Math.Max(low, ChannelPlan.Room(grid.BandRoom.Value, question.Channels.Spacing));
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            var works = ChannelPlan.Middle(grid, question.Channels.Spacing, middle) is { } plan
                && CoherentLine.Of(question with { Channels = plan }, type, scheme).Verdict == Verdict.Pass;
            if (works) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    private static ImmutableArray<HigherRate> Higher(LineQuestion question, WavelengthType type, LineScheme scheme)
    {
        var grid = question.Standards.Grid;
        var found = ImmutableArray.CreateBuilder<HigherRate>();
        foreach (var next in question.Standards.WavelengthTypes.Where(t => t.IsCoherent && t.Rate > type.Rate))
        {
            if (next.SlotOn(grid) is not { } slot) continue;
            // Never closer than today's.
            var spacing = slot > question.Channels.Spacing ? slot : question.Channels.Spacing;
            if (ChannelPlan.Middle(grid, spacing, question.Channels.Channels.Length) is not { } plan) continue;
            var asked = question with
            {
                Channels = plan, Rate = next.Rate, Type = next, Launch = null, Transmitter = null, TransmitterOsnr = null,
            };
            found.Add(new HigherRate(next.Name, plan.Channels.Length, spacing, CoherentLine.Of(asked, next, scheme).Verdict));
        }
        return found.ToImmutable();
    }
}
