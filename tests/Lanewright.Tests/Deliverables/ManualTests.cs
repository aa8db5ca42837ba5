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
