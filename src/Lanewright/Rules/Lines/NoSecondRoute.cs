using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>A second route that is wanted and cannot be had.</summary>
internal sealed class NoSecondRoute() : LineRule("LW5124", nameof(NoSecondRoute))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Statement.Routes < 2 || line.Routes.Length != 1) return;
        var why = !line.Statement.Over.IsEmpty ? "every other way shares a span or a duct with the one that is stated"
            : !line.Separating.IsEmpty ? $"every way needs {string.Join(" and ", line.Separating)}"
            : line is { IsProven: true, Conflicts.IsEmpty: false } ? LineConflict.Words(line.Conflicts)
            : line.IsProven ? "every two ways share a span or a duct"
            : "none was found within the work allowed";
        Say(judgement, line, $"there is no second route that shares nothing with the first: {why}; lease fibre another way");
    }
}
