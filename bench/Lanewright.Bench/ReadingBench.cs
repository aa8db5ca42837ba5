using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;
using YamlDotNet.RepresentationModel;

namespace Lanewright.Bench;

/// <summary>Our tree with places against the document model of the general-purpose library, on the same text.</summary>
internal static class ReadingBench
{
    private const int Runs = 5;
    private const int Links = 20_000;

    /// <summary>Prints the ratio.</summary>
    public static void Run()
    {
        var text = "links:\n" + string.Join('\n', Enumerable.Range(1, Links).Select(i =>
            $"  l{i}: {{ from: {{ of: leaf-{i}, ports: {i % 32} }}, to: spine-{i % 7}, rate: 400G, length: {i % 90} m }}")) + "\n";
        var source = new SourceText("plan.yaml", text);
        var theirs = Clock.Best(Runs, () =>
        {
            var stream = new YamlStream();
            using var reader = new StringReader(text);
            stream.Load(reader);
        });
        var ours = Clock.Best(Runs, () =>
        {
            var findings = new FindingSink();
            if (YamlTree.Read(source, findings) is null || findings.ErrorCount > 0)
                throw new InvalidOperationException("the text was not read");
        });
        Console.WriteLine();
        Console.WriteLine($"reading {Numerals.Whole(Links)} links written one by one ({Numerals.Whole(text.Length / 1024)} KiB)");
        Console.WriteLine($"  document model of the YAML library {Numerals.Fixed(theirs, 0)} ms, "
            + $"our tree with places {Numerals.Fixed(ours, 0)} ms, "
            + $"ratio {Numerals.Fixed(ours / theirs, 2)}");
    }
}
