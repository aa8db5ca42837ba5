using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Sites that no span leads between.</summary>
internal sealed class NoWayBetweenSites() : LineRule("LW5123", nameof(NoWayBetweenSites))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Routes.IsEmpty)
            Say(judgement, line, $"no spans lead from {line.Statement.From.Name} to {line.Statement.To.Name}; describe those there are");
    }
}
