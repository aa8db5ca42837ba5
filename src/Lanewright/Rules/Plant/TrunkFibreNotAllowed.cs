namespace Lanewright.Rules.Plant;

/// <summary>Links that may only run on other fibre than that of their trunks.</summary>
internal sealed class TrunkFibreNotAllowed() : Rule("LW4205", nameof(TrunkFibreNotAllowed))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var statement in judgement.Plan.Statements.Where(s => !s.Media.IsEmpty))
        {
            if (statement.Through.FirstOrDefault(t => !statement.Media.Contains(t.Cable.Fibre)) is not { } trunk) continue;
            judgement.Add(this, statement.Span,
                $"'{statement.Name}' may run on {string.Join(" or ", statement.Media)} and its trunks '{trunk.Name}' are "
                + $"{trunk.Cable.Fibre}; allow that medium, or patch through other trunks",
                statement.Name);
        }
    }
}
