using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Bench;

/// <summary>What judging links by class saves: the same plan with every link in a class of its own, as each states its own
/// loss.</summary>
internal static class ClassesBench
{
    private const int Runs = 3;
    private const int Links = 600;

    /// <summary>Prints the ratio.</summary>
    public static void Run()
    {
        var alike = Clock.Best(Runs, () => Compile(isAlike: true));
        var unlike = Clock.Best(Runs, () => Compile(isAlike: false));
        Console.WriteLine();
        Console.WriteLine($"{Numerals.Whole(Links)} links, medium open, written one by one");
        Console.WriteLine($"  all alike {Numerals.Fixed(alike, 0)} ms, no two alike {Numerals.Fixed(unlike, 0)} ms: "
            + $"a class costs {Numerals.Fixed((unlike - alike) / Links, 2)} ms, ratio {Numerals.Fixed(unlike / alike, 1)}");
    }

    private static void Compile(bool isAlike)
    {
        var pairs = Enumerable.Range(1, Links).Select(i =>
            $"  l{i}: {{ from: a-{i}, to: b-{i}, rate: 400G, length: 40 m, "
            + $"connection-loss: {(isAlike ? "0.3" : "0.3" + Numerals.Padded(i, 4))} dB }}");
        var text = $"""
            lanewright: 1
            devices:
              a: {"{"} model: fixed-32x400, count: {Links} {"}"}
              b: {"{"} model: fixed-32x400, count: {Links} {"}"}
            links:
            {string.Join('\n', pairs)}
            """;
        var judged = Compilation.Of(TextFiles.Of("plan.yaml", text), "plan.yaml");
        if (judged.HasErrors || judged.Design is not { } design || (design.Choices.Length == 1) != isAlike)
            throw new InvalidOperationException("the plan is not what it was meant to be");
    }
}
