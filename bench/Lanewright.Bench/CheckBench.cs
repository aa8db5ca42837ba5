using System.Diagnostics;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Bench;

/// <summary>A whole check by the number of links: time, what dominates it, memory, and how time grows when links do.</summary>
internal static class CheckBench
{
    private const int Runs = 3;

    /// <summary>Prints a line a size.</summary>
    public static void Run(IEnumerable<int> sizes)
    {
        Console.WriteLine();
        Console.WriteLine("check: read, bind, compute every link, judge");
        var before = (Links: 0, Time: 0.0);
        foreach (var size in sizes)
        {
            var text = GeneratedPlan.Of(size);
            var links = 0;
            var classes = 0;
            var steps = "";
            var best = double.MaxValue;
            for (var run = 0; run < Runs; run++)
            {
                GC.Collect();
                var watch = Stopwatch.StartNew();
                var marks = new List<(string Step, double At)>();
                var judged = Compilation.Of(
                    TextFiles.Of("plan.yaml", text), "plan.yaml", step => marks.Add((step.Split(' ')[0], watch.Elapsed.TotalMilliseconds)));
                var time = watch.Elapsed.TotalMilliseconds;
                if (judged is not { Plan: { } plan, Design: { } design, HasErrors: false })
                    throw new InvalidOperationException("the generated plan has faults: " + judged.Findings[0].Message);
                (links, classes) = (plan.Links.Count, design.Choices.Length);
                if (time >= best) continue;
                best = time;
                var ends = marks.Skip(1).Select(m => m.At).Append(time);
                steps = string.Join(", ", marks.Zip(ends, (mark, end) => $"{mark.Step} {Percent((end - mark.At) / time)}"));
            }
            var growth = before.Links > 0 ? $", {Numerals.Fixed(best / before.Time / (links / (double)before.Links), 2)} x linear" : "";
            Console.WriteLine($"  {Numerals.Whole(links),9} links, {classes} classes: {Numerals.Fixed(best, 0)} ms "
                + $"({Numerals.Fixed(best * 1000 / links, 2)} us a link{growth}), at most {Peak()} MiB; {steps}");
            before = (links, best);
        }
    }

    private static string Percent(double share) => Numerals.Fixed(share * 100, 0) + " %";

    private static string Peak() => Numerals.Whole(Process.GetCurrentProcess().PeakWorkingSet64 / (1024 * 1024));
}
