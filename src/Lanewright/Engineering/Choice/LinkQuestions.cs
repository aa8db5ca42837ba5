using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Demands;
using Lanewright.Model.Links;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>Takes off a class of links what does not bear on how it can be made: names, numbers and places in the text. Two classes with
/// equal questions have equal answers, also those of two states of a plan. Whatever is not taken off here counts as part of the
/// question, so a field that is added later makes a question new rather than an answer wrong.</summary>
internal sealed class LinkQuestions
{
    private readonly SharedArrays<string> words = new();
    private readonly SharedArrays<CageModel> cages = new();
    private readonly SharedArrays<CopperLimit> copper = new();
    private readonly SharedArrays<FailureRate> rates = new();
    private readonly SharedArrays<StockItem> stocks = new();
    private readonly SharedArrays<TrunkLeg> legs = new();
    private readonly SharedArrays<ArrayPart> parts = new();
    private readonly SharedArrays<Length?> bridges = new();
    private readonly Dictionary<EndSpec, EndSpec> ends = [];

    /// <summary>How many values are known.</summary>
    public int Count =>
        words.Count + cages.Count + copper.Count + rates.Count + stocks.Count + legs.Count + parts.Count + bridges.Count + ends.Count;

    /// <summary>The question a class asks.</summary>
    public LinkClass Of(LinkClass link) => link with
    {
        Index = 0,
        Statement = Of(link.Statement),
        Statements = [],
        From = Of(link.From),
        To = Of(link.To),
        Through = link.Through is { } way ? new TrunkWay(legs.Of([.. way.Legs.Select(Of)]), bridges.Of(way.Bridges)) : null,
        Count = 1,
        FirstLink = 0,
    };

    /// <summary>What the ways to make links are searched under, equal wherever it holds the same.</summary>
    public FinderContext Of(FinderContext context)
    {
        var policy = context.Policy;
        return context with
        {
            Policy = policy with
            {
                PreferredMedia = words.Of(policy.PreferredMedia),
                ForbiddenMedia = words.Of(policy.ForbiddenMedia),
                PreferredFormFactors = words.Of(policy.PreferredFormFactors),
                CopperLimits = copper.Of(policy.CopperLimits),
                FailureRates = rates.Of(policy.FailureRates),
            },
            Cancel = default,
            Stock = stocks.Of([.. context.Stock.Select(s => s with { Span = default })]),
        };
    }

    private LinkStatement Of(LinkStatement statement) => statement with
    {
        Index = 0,
        Name = "",
        From = Of(statement.From),
        To = Of(statement.To),
        Pattern = default,
        Count = 1,
        FromRun = null,
        ToRun = 1,
        Media = words.Of(statement.Media),
        Through = [],
        Network = "",
        Span = default,
    };

    private TrunkLeg Of(TrunkLeg leg) => leg with
    {
        Trunk = leg.Trunk with { Index = 0, From = 0, To = 0, Parts = parts.Of(leg.Trunk.Parts), Growth = null, Span = default },
    };

    private static LinkEnd Of(LinkEnd end) => end with { Devices = [], Groups = [], Ports = null, Ways = null, Span = default };

    /// <summary>A kind of end is one and the same wherever it holds the same: two ends alike are told apart by identity.</summary>
    private EndSpec Of(EndSpec spec)
    {
        var bare = spec with { Index = 0, Elsewhere = cages.Of(spec.Elsewhere) };
        if (ends.TryGetValue(bare, out var same)) return same;
        return ends[bare] = bare;
    }
}
