using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Placement;

/// <summary>What links of a plan would cost if they were longer or shorter: the cheapest way that passes, by the search and the order that
/// the plan's own links are chosen by, bought new.</summary>
public sealed class LengthPrices
{
    private readonly LinkDesign design;
    private readonly SolutionFinder finder;
    private readonly Ranking ranking;
    private readonly Dictionary<(int Template, int Place), Solution?> known = [];
    private readonly int[] templateOf;

    /// <summary>Prices the links of a design.</summary>
    public LengthPrices(Plan plan, LinkDesign design)
    {
        this.design = design;
        finder = new SolutionFinder(new FinderContext(plan.Standards, plan.Catalogue, plan.Policy));
        ranking = new Ranking(plan.Policy);
        Grid = new LengthGrid(plan.Catalogue, []);
        // Classes that differ by length alone cost the same at the same length.
        var first = new Dictionary<(int, int, int, FanShape, RackType?, RackType?, RouteJoins?), int>();
        templateOf = new int[design.Choices.Length];
        for (var i = 0; i < templateOf.Length; i++)
        {
            var link = design.Choices[i].Class;
            var key = (link.Statement.Index, link.From.Index, link.To.Index, link.Shape, link.FromRack, link.ToRack, link.Joins);
            if (!first.TryGetValue(key, out templateOf[i])) first[key] = templateOf[i] = i;
        }
    }

    /// <summary>Lengths cables can have.</summary>
    public LengthGrid Grid { get; }

    /// <summary>The kinds of links, each by the number of one of its classes.</summary>
    public IEnumerable<int> Templates => templateOf.Distinct();

    /// <summary>Kind of a link, by the number of one of its classes.</summary>
    public int TemplateOf(int link) => templateOf[design.ClassOf(link)];

    /// <summary>How links of a kind would be made over a length; null where nothing passes.</summary>
    /// <param name="template">The kind.</param>
    /// <param name="place">The place of the length in <see cref="Grid"/>.</param>
    public Solution? At(int template, int place)
    {
        if (known.TryGetValue((template, place), out var found)) return found;
        var link = design.Choices[template].Class with { Needed = Grid.LengthOf(place), Way = null };
        var best = ranking.Order(finder.All(link), Solution.NewPrice).FirstOrDefault();
        return known[(template, place)] = best is { Verdict: Verdict.Pass } ? best : null;
    }

    /// <summary>Price of a link of a kind over a length, in hundredths; null where nothing passes.</summary>
    public decimal? Of(int template, Length length) =>
        At(template, Grid.PlaceOf(length)) is { } solution ? Solution.NewPrice(solution) : null;
}
