using System.Diagnostics;

namespace Lanewright.Bench;

/// <summary>Times work on the wall clock, best of several runs: the best is the one least disturbed by the machine.</summary>
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
}
