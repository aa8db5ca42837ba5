using System.Text;
using Lanewright.Model.Binding;
using Lanewright.Notation;

namespace Lanewright.Tests.Deliverables;

/// <summary>The manual lists exactly the keys the program reads.</summary>
public sealed class ManualTests
{
    private const string Begin = "<!-- keys begin: written by the test that compares them -->\n";
    private const string End = "<!-- keys end -->\n";

    [Fact]
    public void Manual_ListsEveryKeyAsTheProgramReadsIt()
    {
        var path = Repository.Path("docs", "language.md");
        var manual = File.ReadAllText(path);
        var from = manual.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        var to = manual.IndexOf(End, StringComparison.Ordinal);
        var keys = Keys();
        if (Environment.GetEnvironmentVariable("LANEWRIGHT_REWRITE") == "1") File.WriteAllText(path, manual[..from] + keys + manual[to..]);
        else Assert.Equal(keys, manual[from..to]);
    }

    // What the manual shows is what the program takes.
    [Fact]
    public void PlansOfTheManual_AreWithoutErrors()
    {
        const string begin = "```plan\n";
        var parts = File.ReadAllText(Repository.Path("docs", "language.md")).Split(begin).Skip(1).ToList();
        Assert.Equal(2, parts.Count);
        foreach (var part in parts)
        {
            var judged = PlanBlock.Compile(part[..part.IndexOf("```", StringComparison.Ordinal)]);
            Assert.DoesNotContain(judged.Findings, f => f.Severity == Lanewright.Findings.Severity.Error);
        }
        // Of the first every cable of a pair goes a way of its own, and each side leaves by its own exit.
        var designed = Expect.Designed(PlanBlock.Compile(parts[0][..parts[0].IndexOf("```", StringComparison.Ordinal)]));
        Assert.NotEmpty(designed.Pathways.Value.Detours.Pairs);
        Assert.All(designed.Pathways.Value.Detours.Pairs, p => Assert.False(p.IsTogether));
        Assert.Equal(["north", "south"], Enumerable.Range(0, designed.Plan.Links.Count)
            .SelectMany(designed.Pathways.Value.RoutesOf).Select(r => r.Name).Distinct().Order());
    }

    // A line of the manual's second plan ends in its panel too: with twelve trunks none of the twelve places is left for it.
    [Theory]
    [InlineData(11, false)]
    [InlineData(12, true)]
    public void LinesTakeAPlaceInTheirPanel(int trunks, bool isOverfilled)
    {
        var manual = File.ReadAllText(Repository.Path("docs", "language.md")).Split("```plan\n")[2];
        var judged = PlanBlock.Compile(manual[..manual.IndexOf("```", StringComparison.Ordinal)].Replace("devices:\n", $$"""
            trunks: { more: { from: gate-odf, to: spare, cable: trunk-os2-12, count: {{trunks}} } }
            devices:
              spare: { model: panel-4u-48, racks: hall/A/1, unit: 36 }

            """, StringComparison.Ordinal));
        Assert.Equal(isOverfilled, judged.Findings.Any(f => f.Kind.Code == "LW4206"));
    }

    private static string Keys()
    {
        var text = new StringBuilder();
        var seen = new HashSet<MapShape>(ReferenceEqualityComparer.Instance);
        var waiting = new Queue<MapShape>([PlanLanguage.File, CatalogueLanguage.File]);
        while (waiting.TryDequeue(out var map))
        {
            if (!seen.Add(map)) continue;
            text.Append($"\n### Keys of {map.Title}\n\n| key | value | meaning | otherwise |\n|---|---|---|---|\n");
            foreach (var key in map.Keys)
            {
                text.Append($"| `{key.Name}` | {Value(key.Value)} | {key.Meaning} | {(key.IsRequired ? "**needed**" : key.Otherwise)} |\n");
                foreach (var inner in Maps(key.Value)) waiting.Enqueue(inner);
            }
        }
        return text.Append('\n').ToString();
    }

    private static string Value(Shape shape) => shape switch
    {
        MapShape map => $"keys of {map.Title}",
        NamesShape { Entry: MapShape map } => $"names, each with the keys of {map.Title}",
        ListShape list => "one or a list of: " + Value(list.Item),
        EitherShape either => Value(either.Short) + "; or keys of " + either.Long.Title,
        _ => shape.Expected,
    };

    private static IEnumerable<MapShape> Maps(Shape shape) => shape switch
    {
        MapShape map => [map],
        NamesShape names => Maps(names.Entry),
        ListShape list => Maps(list.Item),
        EitherShape either => Maps(either.Short).Append(either.Long),
        _ => [],
    };
}
