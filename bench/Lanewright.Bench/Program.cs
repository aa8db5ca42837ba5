using System.Diagnostics;
using Lanewright;
using Lanewright.Bench;
using Lanewright.Text;

foreach (var size in args.Length > 0 ? args.Select(int.Parse).ToArray() : [10_000, 100_000, 1_000_000])
{
    var text = GeneratedPlan.Of(size);
    for (var run = 0; run < 3; run++)
    {
        GC.Collect();
        var watch = Stopwatch.StartNew();
        var cpu = Process.GetCurrentProcess().TotalProcessorTime;
        var steps = new List<string>();
        var judged = Compilation.Of(TextFiles.Of("plan.yaml", text), "plan.yaml", s => { steps.Add($"{watch.Elapsed.TotalMilliseconds:0}:{s}"); });
        Console.WriteLine($"{size}: {judged.Plan!.Links.Count} links, {judged.Design!.Choices.Length} classes, {judged.Findings.Length} findings, {watch.Elapsed.TotalMilliseconds:0} ms, cpu {(Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalMilliseconds:0} ms, {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576} MiB  [{string.Join(", ", steps)}]");
        if (run == 0) foreach (var f in judged.Findings.Take(3)) Console.WriteLine("   " + f.Kind.Code + " " + f.Message);
    }
}
