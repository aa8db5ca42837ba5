using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Two stated routes with a duct or a span in common.</summary>
internal sealed class RoutesShareDuct() : LineRule("LW5125", nameof(RoutesShareDuct))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Shared.IsEmpty) return;
        Say(judgement, line, $"both routes are in {string.Join(" and ", line.Shared)}, and one digger cuts both; lead one of them "
            + "another way");
    }
}
