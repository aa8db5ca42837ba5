using Lanewright.Engineering.Plant;

namespace Lanewright.Rules.Plant;

/// <summary>Cassettes that do not take the trunks they are named for.</summary>
internal sealed class CassetteUnfit() : Rule("LW4212", nameof(CassetteUnfit))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var trunk in judgement.Plan.Trunks)
        {
            var problem = CassetteFit.Problem(judgement.Plan.Standards, trunk);
            if (problem.Length == 0) continue;
            judgement.Add(this, trunk.Span, $"'{trunk.Name}': {problem}; take a cassette or a trunk that fits", trunk.Name, trunk.Count);
        }
    }
}
