using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Text;
using nietras.SeparatedValues;

namespace Lanewright.Bench;

/// <summary>Every document of one large plan, and the cable schedule against the general-purpose writer given finished texts.</summary>
internal static class DocumentsBench
{
    private const int Runs = 3;

    /// <summary>Prints a line a document.</summary>
    public static void Run(int links)
    {
        var judged = Compilation.Of(TextFiles.Of("plan.yaml", GeneratedPlan.Of(links)), "plan.yaml");
        var documents = Compilation.Deliver(judged);
        Console.WriteLine();
        Console.WriteLine($"documents of {Numerals.Whole(links)} links, one after the other");
        var total = 0.0;
        foreach (var folder in documents.GroupBy(d => d.Name.Contains('/') ? d.Name[..d.Name.IndexOf('/')] + "/" : d.Name))
        {
            var bytes = 0L;
            var time = Clock.Best(Runs, () => bytes = folder.Sum(Write));
            total += time;
            Console.WriteLine($"  {folder.Key,-16} {Numerals.Fixed(time, 0),6} ms {Numerals.Fixed(bytes / 1048576.0, 1),7} MiB");
        }
        Console.WriteLine($"  {"all",-16} {Numerals.Fixed(total, 0),6} ms");
        var cables = documents.Single(d => d.Name == "cables.csv");
        var ours = Clock.Best(Runs, () => Write(cables));
        var rows = Rows(cables);
        var theirs = Clock.Best(Runs, () => Write(rows));
        Console.WriteLine($"  cables.csv: computed and written {Numerals.Fixed(ours, 0)} ms, the same texts through the CSV library alone "
            + $"{Numerals.Fixed(theirs, 0)} ms, ratio {Numerals.Fixed(ours / theirs, 2)}");
    }

    private static long Write(Deliverable document)
    {
        using var stream = new MemoryStream();
        document.Write(stream);
        return stream.Length;
    }

    private static List<string[]> Rows(Deliverable table)
    {
        using var stream = new MemoryStream();
        table.Write(stream);
        stream.Position = 0;
        using var reader = Sep.New(',').Reader(o => o with { Unescape = true }).From(stream);
        var rows = new List<string[]> { reader.Header.ColNames.ToArray() };
        foreach (var row in reader) rows.Add(row[..].ToStringsArray());
        return rows;
    }

    private static void Write(List<string[]> rows)
    {
        using var stream = new MemoryStream();
        using var writer = Sep.New(',').Writer(o => o with { Escape = true }).To(stream);
        var names = rows[0];
        foreach (var row in rows.Skip(1))
        {
            using var line = writer.NewRow();
            for (var i = 0; i < names.Length; i++) line[names[i]].Set(row[i]);
        }
    }
}
