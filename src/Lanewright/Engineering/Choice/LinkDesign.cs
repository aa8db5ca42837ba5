using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Choice;

/// <summary>How every link of a plan is made: its class, its share of the class, and the cable it runs in.</summary>
public sealed class LinkDesign
{
    private readonly Plan plan;
    private readonly int[] classOf;
    private readonly byte[] shareOf;
    private readonly int[] cableOf;

    /// <summary>Cables that find no room are led another way, which makes them longer, which may make them others: so often at
    /// most.</summary>
    private const int MostRounds = 4;

    private LinkDesign(Plan plan, LinkClasses classes, ImmutableArray<ClassChoice> choices, RouteLength lengths)
    {
        this.plan = plan;
        Lengths = lengths;
        classOf = classes.ClassOf;
        Choices = choices;
        UnmeasuredLinks = classes.UnmeasuredLinks;
        Trunks = classes.Trunks;
        shareOf = Shares(choices);
        cableOf = new int[plan.Links.Count];
        Cables = LayCables(classes.Bundles);
    }

    /// <summary>Measures lengths along the pathways.</summary>
    public RouteLength Lengths { get; }

    /// <summary>Where cables lie; null where a plan has no pathways.</summary>
    public CableLaying? Laying { get; private set; }

    /// <summary>The choice for each class.</summary>
    public ImmutableArray<ClassChoice> Choices { get; }

    /// <summary>Lengths of the trunks, and how links go through them.</summary>
    public TrunkWays Trunks { get; }

    /// <summary>The cables, in the order of their first links.</summary>
    public ImmutableArray<CableRun> Cables { get; }

    /// <summary>One link of each statement whose length cannot be told, by statement.</summary>
    public SortedDictionary<int, int> UnmeasuredLinks { get; }

    /// <summary>Designs all links of a plan.</summary>
    public static LinkDesign Of(Plan plan) =>
        Of(plan, new Lazy<LineBook>(() => LineBook.Of(plan)), new EarlierSolutions(), CancellationToken.None);

    /// <summary>Designs all links of a plan. Where cables go ways longer than the shortest, they are chosen again for the ways they
    /// go.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="lines">Its lines, whose cords lie in the same pathways.</param>
    /// <param name="earlier">Ways that were found before.</param>
    /// <param name="cancel">Breaks the work off.</param>
    internal static LinkDesign Of(Plan plan, Lazy<LineBook> lines, EarlierSolutions earlier, CancellationToken cancel)
    {
        var lengths = new RouteLength(plan);
        if (lengths.Ways is not { } ways) return Once(LaidDetours.None);
        var detours = plan.Statements.Any(s => s.ApartFrom is not null)
            ? LaidDetours.Of(ApartWays.Of(plan, lengths, ways))
            : LaidDetours.None;
        var cords = plan.LinePorts.IsEmpty ? [] : lines.Value.Cords;
        for (var round = 1; ; round++)
        {
            var design = Once(detours);
            var laying = CableLaying.Of(plan, design, cords, ways, detours, mayMove: round < MostRounds);
            design.Laying = laying;
            if (laying.Detours.Moves.Length == detours.Moves.Length) return design;
            detours = laying.Detours;
            cancel.ThrowIfCancellationRequested();
        }

        LinkDesign Once(LaidDetours known)
        {
            var classes = LinkClasses.Of(plan, lengths, known);
            return new LinkDesign(plan, classes, LinkChooser.Choose(plan, classes, earlier, cancel), lengths);
        }
    }

    /// <summary>Class of a link.</summary>
    public int ClassOf(int link) => classOf[link];

    /// <summary>Which share of its class a link belongs to.</summary>
    public int ShareOf(int link) => shareOf[link];

    /// <summary>How a link is made; null when no way was found.</summary>
    public Solution? SolutionOf(int link)
    {
        var choice = Choices[classOf[link]];
        return choice.Shares.IsEmpty ? null : choice.Shares[shareOf[link]].Solution;
    }

    /// <summary>Number of the cable of a link, from 0; -1 when there is none to lay.</summary>
    public int CableOf(int link) => cableOf[link];

    /// <summary>The modules of the plan: one for each cage that has one, counted by model.</summary>
    public IEnumerable<(ModuleModel Module, long Count)> ModulesInCages()
    {
        var counts = new Dictionary<ModuleModel, long>(ReferenceEqualityComparer.Instance);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (SolutionOf(link) is not { } solution) continue;
            // The first part of a split cage stands for its module.
            if (solution.FromModule is { } a && plan.Links.FromPort(link).Part == 0) counts[a] = counts.GetValueOrDefault(a) + 1;
            if (solution.ToModule is { } b && plan.Links.ToPort(link).Part == 0) counts[b] = counts.GetValueOrDefault(b) + 1;
        }
        return counts.Select(c => (c.Key, c.Value));
    }

    /// <summary>How many cables and links each way of making links has, with a statement it serves.</summary>
    public IEnumerable<(Solution Solution, int Statement, long Cables, long Links)> CablesBySolution()
    {
        var counts = Choices.Select(c => new (long Cables, long Links)[c.Shares.Length]).ToArray();
        foreach (var cable in Cables)
        {
            ref var count = ref counts[classOf[cable.FirstLink]][shareOf[cable.FirstLink]];
            count = (count.Cables + 1, count.Links + cable.Links);
        }
        return
            from choice in Choices
            from share in Enumerable.Range(0, choice.Shares.Length)
            let count = counts[choice.Class.Index][share]
            select (choice.Shares[share].Solution, choice.Class.Statement.Index, count.Cables, count.Links);
    }

    /// <summary>Links of a class take its shares in their own order.</summary>
    private byte[] Shares(ImmutableArray<ClassChoice> choices)
    {
        var shares = new byte[classOf.Length];
        var taken = new int[choices.Length];
        var current = new byte[choices.Length];
        for (var link = 0; link < classOf.Length; link++)
        {
            var index = classOf[link];
            var all = choices[index].Shares;
            if (all.Length < 2) continue;
            if (taken[index] == all[current[index]].Links && current[index] < all.Length - 1)
            {
                current[index]++;
                taken[index] = 0;
            }
            shares[link] = current[index];
            taken[index]++;
        }
        return shares;
    }

    /// <summary>A fan-out is one cable for its bundle; everything else is a cable a link.</summary>
    private ImmutableArray<CableRun> LayCables(CageBundles bundles)
    {
        var runs = ImmutableArray.CreateBuilder<CableRun>(plan.Links.Count);
        var cableOfBundle = new Dictionary<(int Bundle, string Cable), int>();
        for (var link = 0; link < cableOf.Length; link++)
        {
            cableOf[link] = -1;
            // Where the catalogue lacks the cord there is nothing to lay.
            if (SolutionOf(link) is not { Cable: not CordModel { IsPlaceholder: true } } solution) continue;
            var bundle = bundles.BundleOf(link);
            if (bundle >= 0 && solution.LinksPerCable > 1)
            {
                var key = (bundle, solution.Cable.Name);
                if (cableOfBundle.TryGetValue(key, out var cable))
                {
                    cableOf[link] = cable;
                    runs[cable] = runs[cable] with { Links = runs[cable].Links + 1 };
                    continue;
                }
                cableOfBundle[key] = runs.Count;
            }
            cableOf[link] = runs.Count;
            runs.Add(new CableRun(link, 1));
        }
        return runs.ToImmutable();
    }
}
