using Lanewright.Engineering.Reliability;
using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Model.Demands;

namespace Lanewright.Rules.Power;

/// <summary>A level of spares that is asked for where nothing says how often parts fail.</summary>
internal sealed class SparesUnreckoned() : Rule("LW4411", nameof(SparesUnreckoned), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Policy.SpareLevel is null) return;
        var known = judgement.Plan.Policy.FailureRates.Select(r => r.Part).ToHashSet();
        // Hosts, cards and what lies in panels are kept in reserve by few; the table of spares names them.
        var used = judgement.Parts.Where(p => p.Needed > 0).Select(p => SpareBook.PartOf(judgement.Plan, p.Item)).OfType<FailingPart>()
            .Where(p => p is FailingPart.Switch or FailingPart.Module or FailingPart.Cable);
        foreach (var part in used.Distinct().Order().Where(p => !known.Contains(p)))
        {
            var name = DemandLanguage.Parts.First(p => p.Part == part).Name;
            judgement.Add(this, judgement.Plan.Sources[0].Span(0, 0),
                $"spares of each {name} are wanted for a level and nothing says how often one fails; add a line 'of: {name}' to "
                + "failure-rates, from the maker or from your own records", name);
        }
    }
}
