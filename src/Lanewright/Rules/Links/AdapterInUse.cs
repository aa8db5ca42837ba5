using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>A module in an adapter: it takes a whole cage for fewer lanes, and the platform must read another memory map.</summary>
internal sealed class AdapterInUse() : Rule("LW2109", nameof(AdapterInUse), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var (choice, _) in judgement.Judged)
        {
            var statement = choice.Class.Statement;
            if (!statement.From.UsesAdapter && !statement.To.UsesAdapter) continue;
            judgement.Add(this, choice,
                "the module sits in an adapter: the cage's other lanes are lost, "
                + "and the platform's release notes must list the adapter");
        }
    }
}
