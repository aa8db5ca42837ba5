using System.Diagnostics;

namespace Lanewright.Bench;

/// <summary>Times work, best of several runs: the best is the one least disturbed by the machine. On a machine that others use as well the
/// time of all processors together says more than the wall clock.</summary>
internal static class Clock
{
    /// <summary>Milliseconds of the best run.</summary>
    public static double Best(int runs, Action work)
    {
        var best = double.MaxValue;
        for (var run = 0; run < runs; run++)
        {
            GC.Collect();
            var watch = Stopwatch.StartNew();
            work();
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }
        return best;
    }

    /// <summary>Milliseconds of the best run on the wall clock, and of the best by all processors together.</summary>
    public static (double Wall, double Processors) Both(int runs, Action work)
    {
        var (wall, processors) = (double.MaxValue, double.MaxValue);
        for (var run = 0; run < runs; run++)
        {
            GC.Collect();
            var (watch, before) = (Stopwatch.StartNew(), Process.GetCurrentProcess().TotalProcessorTime);
            work();
            wall = Math.Min(wall, watch.Elapsed.TotalMilliseconds);
            processors = Math.Min(processors, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }
        return (wall, processors);
    }
}
