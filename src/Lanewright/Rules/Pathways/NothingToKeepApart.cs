using Lanewright.Findings;

namespace Lanewright.Rules.Pathways;

/// <summary>A wish for ways apart that no two cables can take.</summary>
internal sealed class NothingToKeepApart() : Rule("LW4109", nameof(NothingToKeepApart), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        var paired = judgement.Pathways.Value.Detours.Pairs
            .SelectMany(p => new[] { plan.Links.Statement(p.One), plan.Links.Statement(p.Other) }).ToHashSet();
        foreach (var statement in plan.Statements)
        {
            if (statement.ApartFrom is not { } other || paired.Contains(statement.Index)) continue;
            var why = judgement.Design.Lengths.Ways is null
                ? "the plan has no pathways"
                : !statement.Through.IsEmpty || !plan.Statements[other].Through.IsEmpty
                    ? "links through panels are laid with their trunks"
                    : "no device has links of both that leave its rack along pathways";
            judgement.Add(this, statement.Span,
                $"'{statement.Name}' is to be kept apart from '{plan.Statements[other].Name}', and nothing is: {why}", statement.Name);
        }
    }
}
