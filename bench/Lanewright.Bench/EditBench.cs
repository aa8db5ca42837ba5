using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Bench;

/// <summary>A compilation after an edit of one line, by the number of links: with what earlier compilations found, and from scratch. Every
/// edit is a state of the plan that was not there before. What clearing memory takes on the way is part of it: the middle run of several is
/// told.</summary>
internal static partial class EditBench
{
    private const int Runs = 5;

    private static readonly (string Words, Func<string, int, string> Edit)[] Edits =
    [
        ("nothing of the links (revision)", (t, n) => t.Replace("name: ", $"revision: r{n}\nname: ", StringComparison.Ordinal)),
        ("a length of one set", (t, n) => Line(t, "up-2: ", $"length: {20 + n} m, ")),
        ("medium and connections of one set", (t, n) => Line(t, "up-2: ", $"medium: OS2, connections: {2 + n}, ")),
        ("more links of one set than it has ports", (t, n) => Line(t, "edge-3: ", $"count: {n + 2}, ")),
        ("a model that nothing is called", (t, n) => FirstModel().Replace(t, $"model: fixed-32x400-{n}", 1)),
        ("a group with fewer devices", (t, n) => t.Replace("host-2: { model: server-2u, cards: nic-2x200, racks: hall/R2, per-rack: 16",
            $"host-2: {{ model: server-2u, cards: nic-2x200, racks: hall/R2, per-rack: {15 - n}", StringComparison.Ordinal)),
        ("the policy (loss of every connection)", (t, n) => t.Replace("connection-loss: 0.3 dB",
            string.Create(CultureInfo.InvariantCulture, $"connection-loss: 0.3{n + 1} dB"), StringComparison.Ordinal)),
    ];

    /// <summary>Prints the milliseconds of each edit.</summary>
    public static void Run(IEnumerable<int> sizes)
    {
        Console.WriteLine();
        Console.WriteLine("edit of one line: milliseconds until judged, with earlier work (of it the steps) and from scratch");
        foreach (var size in sizes)
        {
            var text = GeneratedPlan.Of(size);
            var earlier = new EarlierWork();
            for (var warm = 0; warm < Runs; warm++) Compile(text, earlier);
            Console.WriteLine($"  {Numerals.Whole(Compile(text, earlier).Links)} links");
            foreach (var (words, edit) in Edits)
            {
                var runs = new List<(double Time, string Steps, double Cpu)>();
                for (var run = 0; run < Runs; run++)
                {
                    // As a person who types: back and forth between the plan and one more change of it.
                    Compile(text, earlier);
                    var before = Environment.CpuUsage.TotalTime;
                    var (time, steps, _) = Compile(edit(text, run), earlier);
                    runs.Add((time, steps, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds));
                }
                var middle = runs.OrderBy(r => r.Time).ElementAt(Runs / 2);
                var scratch = Enumerable.Range(0, Runs).Select(run => Compile(edit(text, run), new EarlierWork()).Time)
                    .Order().ElementAt(Runs / 2);
                Console.WriteLine($"    {words}: {Numerals.Fixed(middle.Time, 0)} ms ({middle.Steps}), "
                    + $"{Numerals.Fixed(middle.Cpu, 0)} ms of all cores, "
                    + $"from scratch {Numerals.Fixed(scratch, 0)} ms");
            }
        }
    }

    private static string Line(string text, string at, string more) => text.Replace($"{at}{{ ", $"{at}{{ {more}", StringComparison.Ordinal);

    private static (double Time, string Steps, int Links) Compile(string text, EarlierWork earlier)
    {
        var watch = Stopwatch.StartNew();
        var marks = new List<(string Step, double At)>();
        var judged = Compilation.Of(TextFiles.Of("plan.yaml", text), "plan.yaml",
            step => marks.Add((step.Split(' ')[0], watch.Elapsed.TotalMilliseconds)), earlier);
        var time = watch.Elapsed.TotalMilliseconds;
        var ends = marks.Skip(1).Select(m => m.At).Append(time);
        var steps = string.Join(", ", marks.Zip(ends, (mark, end) => $"{mark.Step} {Numerals.Fixed(end - mark.At, 0)}"));
        return (time, steps, judged.Plan?.Links.Count ?? 0);
    }

    [GeneratedRegex("model: fixed-32x400")]
    private static partial Regex FirstModel();
}
