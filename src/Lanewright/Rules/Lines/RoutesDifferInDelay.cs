using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>Two routes whose delays differ too much.</summary>
internal sealed class RoutesDifferInDelay() : LineRule("LW5128", nameof(RoutesDifferInDelay))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Statement.DifferenceMost is not { } most || line.Difference is not { } difference) return;
        if (!Rounding.IsAbove(difference.Nanoseconds, most.Nanoseconds)) return;
        Say(judgement, line, $"the delays of its routes differ by {Microseconds(difference)}, and {Microseconds(most)} are allowed; "
            + "lengthen the shorter route, or keep traffic that minds on one of them",
            new Evidence("latency-difference", difference.Nanoseconds, most.Nanoseconds, "ns", null));
    }

    private static string Microseconds(Duration delay) => Numerals.Shown(delay.Nanoseconds / 1000, "us");
}
