using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A link left open for which nothing in the catalogue passes.</summary>
internal sealed class NoCandidatePasses() : Rule("LW2701", nameof(NoCandidatePasses))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var choice in judgement.Design.Choices)
        {
            if (choice.Candidates.IsEmpty || choice.Verdict != Verdict.Fail) continue;
            if (choice.Chosen is { } chosen && (choice.IsNamed || SameCause.IsOfTrunks(chosen.Checks))) continue;
            var change = SmallestChange.Of(judgement.Plan, choice) ?? "no single change is enough";
            var nearest = choice.Candidates[0];
            judgement.Add(this, choice,
                $"none of {choice.Candidates.Length} ways to make a {choice.Class.Statement.Rate} link passes; "
                + $"nearest is {nearest.Name} ({LostBy.Reason(nearest, winner: (Solution?)null, "")}). Smallest change: {change}");
        }
    }
}
