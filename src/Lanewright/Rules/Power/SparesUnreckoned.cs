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
        // Hosts, cards and what lies in panels are kept in reserve by few; the table of spares names them.
        var unknown =
            from line in judgement.Parts
            where line.Needed > 0
            let part = SpareBook.PartOf(judgement.Plan, line.Item)
            where part is FailingPart.Switch or FailingPart.Module or FailingPart.Cable
            where judgement.Plan.Policy.RateOf(part.Value, line.Item.Name) is null
            select part.Value;
        foreach (var part in unknown.Distinct().Order())
        {
            var name = DemandLanguage.Parts.First(p => p.Part == part).Name;
            judgement.Add(this, judgement.Plan.Sources[0].Span(0, 0),
                $"spares of each {name} are wanted for a level and nothing says how often one fails; add a line 'of: {name}' to "
                + "failure-rates, from the maker or from your own records", name);
        }
    }
}
