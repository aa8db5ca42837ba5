using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>A line slower than it may be.</summary>
internal sealed class LineLatencyExceeded() : LineRule("LW5127", nameof(LineLatencyExceeded))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        foreach (var route in line.Routes)
        {
            if (line.Statement.LatencyMost is not { } most || route.Answer.Design.Latency is not { } delay) continue;
            if (!Rounding.IsAbove(delay.Value.Nanoseconds, most.Nanoseconds)) continue;
            Say(judgement, line, $"light takes {Microseconds(delay.Value)} over {route.Name}, and {Microseconds(most)} are allowed; lead "
                + "it a shorter way", new Evidence("latency", delay.Value.Nanoseconds, most.Nanoseconds, "ns", delay.Source));
        }
    }

    private static string Microseconds(Duration delay) => Numerals.Shown(delay.Nanoseconds / 1000, "us");
}
