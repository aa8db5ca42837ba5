using System.Collections.Immutable;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Model;
using Lanewright.Model.Lines;
using Lanewright.Model.Places;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>All lines of a plan: their routes, how they are built, and how many pairs of each span they take.</summary>
public sealed class LineBook
{
    /// <summary>What a pair that a line before has taken adds to the cost of a span: of two that cost the same, the emptier is
    /// used.</summary>
    private const double Taken = 1e-9;

    private readonly Plan plan;
    private readonly int[] pairsUsed;
    private readonly LineAvailability availability;
    private readonly LineModules modules;
    private readonly ImmutableArray<string> ducts;

    private LineBook(Plan plan)
    {
        this.plan = plan;
        modules = new LineModules(plan);
        ducts = [.. plan.Spans.SelectMany(s => s.Ducts).Distinct().Order(NaturalOrder.Instance)];
        availability = new LineAvailability(plan);
        var isPriced = plan.Spans.All(s => s.Cost is not null);
        var lines = ImmutableArray.CreateBuilder<LineResult>(plan.Lines.Length);
        pairsUsed = new int[plan.Spans.Length];
        foreach (var line in plan.Lines)
        {
            lines.Add(Of(line, Graph(isPriced)));
            foreach (var route in lines[^1].Routes)
                foreach (var span in route.Spans) pairsUsed[span.Index] += PairsOf(route);
        }
        Lines = lines.ToImmutable();
        Cords = LineCords.Of(plan, Lines);
    }

    /// <summary>The lines in the order of the plan.</summary>
    public ImmutableArray<LineResult> Lines { get; }

    /// <summary>The cords of lines whose ports the plan names.</summary>
    public ImmutableArray<LineCord> Cords { get; }

    /// <summary>The book of a plan.</summary>
    public static LineBook Of(Plan plan) => new(plan);

    /// <summary>The route that a port belongs to; null where the line has no such route.</summary>
    public LineRoute? RouteOf(LinePort port)
    {
        var line = Lines[port.Line];
        return port.Route < line.Routes.Length ? line.Routes[port.Route] : null;
    }

    /// <summary>Pairs that lines take of a span: one, or as many as grey optics need.</summary>
    public int PairsUsed(FibreSpan span) => pairsUsed[span.Index];

    /// <summary>Pairs that a line takes on a way.</summary>
    public static int PairsOf(LineRoute route)
    {
        var design = route.Answer.Design;
        if (design.Scheme != LineScheme.Grey) return 1;
        var type = route.Answer.Question.Standards.Interface(design.TypeName);
        return Math.Max(1, type?.FibrePairs ?? 1) * route.Answer.Question.Channels.Channels.Length;
    }

    /// <summary>Sites and spans as the lines before leave them. Costs count where every span states one; lengths where not.</summary>
    private RouteGraph Graph(bool isPriced) => new(plan.Building.Sites.Length, [.. plan.Spans.Select(s => new RouteEdge(
        s.From.Index, s.To.Index, (isPriced ? s.Cost ?? 0 : s.Length.Kilometres) + (Taken * pairsUsed[s.Index]),
        [.. s.Ducts.Select(d => ducts.IndexOf(d))]))]);

    private LineResult Of(LineStatement line, RouteGraph graph)
    {
        var (ways, separating, isProven) = WaysOf(line, graph);
        ImmutableArray<LineRoute> routes = [.. ways.Select((w, i) => RouteOf(line, w, i)).OfType<LineRoute>()];
        return new LineResult
        {
            Statement = line,
            Routes = routes,
            Separating = separating,
            IsProven = isProven,
            Conflicts = line.Routes > routes.Length && separating.IsEmpty && isProven && !routes.IsEmpty ? ConflictsOf(line, graph) : [],
            Shared = routes is [var first, var second] ? SharedBy(first.Spans, second.Spans) : [],
            Uptime = availability.Of(line, [.. routes.Where(r => r.Carries)]),
            Cuts = CutsOf(line, routes),
        };
    }

    private (ImmutableArray<ImmutableArray<FibreSpan>> Ways, ImmutableArray<string> Separating, bool IsProven) WaysOf(
        LineStatement line, RouteGraph graph)
    {
        if (!line.OtherWay.IsEmpty) return ([line.Over, line.OtherWay], [], true);
        var (from, to) = (line.From.Index, line.To.Index);
        if (line.Routes == 1 || !line.Over.IsEmpty)
        {
            if (!line.Over.IsEmpty && line.Routes == 1) return ([line.Over], [], true);
            if (!line.Over.IsEmpty) return Beside(line, graph);
            return graph.Cheapest(from, to, _ => true) is { } only ? ([SpansOf(only)], [], true) : ([], [], true);
        }
        if (graph.Cheapest(from, to, _ => true) is not { } single) return ([], [], true);
        var separating = SeparatingOf(graph, from, to);
        if (!separating.IsEmpty) return ([SpansOf(single)], separating, true);
        var (pair, isProven) = graph.CheapestPair(from, to);
        return (pair is null ? [SpansOf(single)] : [SpansOf(pair.First), SpansOf(pair.Second)], [], isProven);
    }

    /// <summary>The first way is stated: the second is the shortest that shares nothing with it.</summary>
    private (ImmutableArray<ImmutableArray<FibreSpan>>, ImmutableArray<string>, bool) Beside(LineStatement line, RouteGraph graph)
    {
        var used = line.Over.Select(s => s.Index).ToHashSet();
        var risks = line.Over.SelectMany(s => s.Ducts).ToHashSet(StringComparer.Ordinal);
        var other = graph.Cheapest(line.From.Index, line.To.Index,
            e => !used.Contains(e) && !plan.Spans[e].Ducts.Any(risks.Contains));
        return (other is null ? [line.Over] : [line.Over, SpansOf(other)], [], true);
    }

    /// <summary>What every two ways share; of a way that is stated, what every other one shares with it.</summary>
    private ImmutableArray<LineConflict> ConflictsOf(LineStatement line, RouteGraph graph)
    {
        var ways = graph.All(line.From.Index, line.To.Index, MostWays);
        if (ways.IsEmpty) return [];
        ImmutableArray<ImmutableArray<FibreSpan>> all = [.. ways.Select(SpansOf)];
        var found =
            from first in line.Over.IsEmpty ? all : [line.Over]
            from other in all
            where line.Over.IsEmpty ? all.IndexOf(other) > all.IndexOf(first) : !other.SequenceEqual(first)
            select new LineConflict([.. first.Select(s => s.Name)], [.. other.Select(s => s.Name)], SharedBy(first, other));
        return [.. found];
    }

    /// <summary>Ways beyond which nobody reads what every two of them share.</summary>
    private const int MostWays = 16;

    private ImmutableArray<string> SeparatingOf(RouteGraph graph, int from, int to)
    {
        var (edges, risks) = graph.Separating(from, to);
        return [.. edges.Select(e => $"span '{plan.Spans[e].Name}'"), .. risks.Select(d => $"duct '{ducts[d]}'")];
    }

    private ImmutableArray<FibreSpan> SpansOf(Route route) => [.. route.Edges.Select(e => plan.Spans[e])];

    private LineRoute? RouteOf(LineStatement line, ImmutableArray<FibreSpan> way, int route)
    {
        if (PlanLines.Question(plan, line, way) is not { } asked) return null;
        var question = asked with { TerminalsOf = type => modules.Of(line, route, type) };
        var scheme = Enum.GetValues<LineScheme>().Where(s => LineWords.Name(s) == line.Scheme).Cast<LineScheme?>().FirstOrDefault();
        var named = scheme is { } one ? LineLadder.Try(question, one) : null;
        var answer = named is null ? LineLadder.Of(question) : Named(question, named);
        var (sites, terminals) = (SitesOf(line, way), modules.Of(line, route, answer.Design.TypeName));
        return new LineRoute(way, sites, answer, availability.Of(way, sites), terminals);
    }

    private static LineAnswer Named(LineQuestion question, LineDesign design)
    {
        var price = new LadderPrices(question).Of(design);
        return new LineAnswer(question, design,
            [new TriedScheme(design.Scheme, design.Verdict, LineWords.Reason(design, question.LeastMargin), price)], price);
    }

    private static ImmutableArray<Site> SitesOf(LineStatement line, ImmutableArray<FibreSpan> way)
    {
        var sites = ImmutableArray.CreateBuilder<Site>();
        sites.Add(line.From);
        foreach (var span in way) sites.Add(span.From == sites[^1] ? span.To : span.From);
        return sites.ToImmutable();
    }

    private static ImmutableArray<string> SharedBy(ImmutableArray<FibreSpan> first, ImmutableArray<FibreSpan> second) =>
    [
        .. first.Intersect(second).Select(s => $"span '{s.Name}'"),
        .. first.Except(second).SelectMany(s => s.Ducts).Intersect(second.Except(first).SelectMany(s => s.Ducts))
            .Select(d => $"duct '{d}'"),
    ];

    private static ImmutableArray<LineCut> CutsOf(LineStatement line, ImmutableArray<LineRoute> routes)
    {
        var spans = routes.SelectMany(r => r.Spans).Distinct().Select(cut => Cut(cut.Name, false, r => r.Crosses(cut)));
        var inDucts = routes.SelectMany(r => r.Spans).SelectMany(s => s.Ducts).Distinct().Order(NaturalOrder.Instance)
            .Select(cut => Cut(cut, true, r => r.LiesIn(cut)));
        return [.. spans.Concat(inDucts).OrderBy(c => c.Left).ThenBy(c => c.IsDuct).ThenBy(c => c.What, NaturalOrder.Instance)];

        LineCut Cut(string what, bool isDuct, Func<LineRoute, bool> isIn) => new(
            what, isDuct, line.Rate * (line.Channels * routes.Count(r => r.Carries && !isIn(r))),
            [.. Enumerable.Range(0, routes.Length).Where(i => isIn(routes[i]))]);
    }
}
