using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>A link that cannot be proved because a value it needs is not known.</summary>
internal sealed class LimitUnknown() : Rule("LW2702", nameof(LimitUnknown), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var (choice, solution) in judgement.Judged)
        {
            if (solution.Verdict == Verdict.Fail) continue;
            // Of fibres that nobody can follow the rule about their trunks speaks.
            var unknown = solution.Checks
                .Where(c => c.Verdict == Verdict.Unproven && !c.IsAdvice && c.Name != CheckNames.Polarity).ToList();
            if (unknown.Count == 0) continue;
            var what = string.Join("; ", unknown.Select(c => c.Note.Length > 0 ? $"{c.Name}: {c.Note}" : c.Name));
            judgement.Add(this, choice,
                $"{solution.TypeName} is unproven ({what}); take the figures from the module's data sheet "
                + "and add them with 'standards', or choose a type whose limits are known",
                unknown[0]);
        }
    }
}
