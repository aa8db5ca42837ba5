using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>Every way a catalogue offers to carry a rate over a distance, with no plan around it.</summary>
public sealed class RateQuestion
{
    private readonly FinderContext context;
    private readonly LinkStatement wanted;

    /// <summary>Asks about a link like the given statement, whose devices are not looked at.</summary>
    public RateQuestion(FinderContext context, LinkStatement wanted)
    {
        this.context = context;
        this.wanted = wanted;
    }

    /// <summary>The ways, best first.</summary>
    /// <param name="from">The cage of one end; null for any.</param>
    /// <param name="to">The cage of the other; null for the same as the first.</param>
    public ImmutableArray<Solution> Answer(CageModel? from, CageModel? to)
    {
        var pairs = from is not null ? [(from, to ?? from)] : AnyCage().Select(c => (c, c)).ToList();
        var finder = new SolutionFinder(context);
        var found = pairs.SelectMany(p => finder.All(ClassOf(p.Item1, p.Item2)));
        // The same cable goes into cages of several generations: where the cage is open, the one that runs it counts.
        return [.. new Ranking(context.Policy).Order(found, Solution.NewPrice).DistinctBy(s => s.Name)];
    }

    /// <summary>A cage of a form factor that runs anything its contacts are made for.</summary>
    public static CageModel CageOf(
        StandardsLibrary standards, FormFactor formFactor, int lanes, IEnumerable<string> laneRates, BitRate rate)
    {
        var rates = laneRates.Where(r => standards.Signal(r) is { } s && s.Baud <= formFactor.LaneBaudMax).ToImmutableArray();
        return new CageModel
        {
            FormFactor = formFactor,
            Lanes = lanes,
            LaneRates = rates,
            Signals = [.. rates.Select(standards.Signal).OfType<LaneSignal>()],
            Modes = [new PortMode(1, rate)],
        };
    }

    /// <summary>An empty statement for a link of a rate.</summary>
    public static LinkStatement StatementFor(BitRate rate)
    {
        var end = new LinkEnd { Devices = [], Groups = [] };
        return new LinkStatement { Index = 0, Name = "question", From = end, To = end, Rate = rate };
    }

    private IEnumerable<CageModel> AnyCage() => context.Standards.FormFactors
        .Where(f => context.Catalogue.Modules.Any(m => m.FormFactor == f)
            || context.Catalogue.Assemblies.Any(a => a.Near == f)
            || f.Name == "RJ45")
        .Select(f => CageOf(context.Standards, f, f.Lanes, context.Standards.SignalNames, wanted.Rate));

    private LinkClass ClassOf(CageModel from, CageModel to) => new()
    {
        Index = 0,
        Statement = wanted,
        From = new EndSpec(0, from, 1, from.PowerLimit),
        To = new EndSpec(1, to, 1, to.PowerLimit),
        Needed = wanted.Length,
        Count = 1,
    };
}
