using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A link slower than the plan allows.</summary>
internal sealed class LatencyExceeded() : CheckRule("LW2604", nameof(LatencyExceeded), CheckNames.Latency)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"one way takes {Value(check)} and the link allows {Limit(check)}; shorten it or take a type with a faster code";
}
