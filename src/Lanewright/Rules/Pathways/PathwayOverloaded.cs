using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray whose cables weigh more than it bears.</summary>
internal sealed class PathwayOverloaded() : Rule("LW4110", nameof(PathwayOverloaded))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var pathway in judgement.Pathways.Value.Fills.GroupBy(f => f.Pathway))
        {
            if (pathway.Key.LoadRating is not { } bears || pathway.MaxBy(f => f.KilogramsAMetre) is not { } heaviest) continue;
            if (!heaviest.IsOverloaded) continue;
            judgement.Add(this, pathway.Key.Span,
                $"the cables in '{pathway.Key.FullName}' weigh {Numerals.Shown(heaviest.KilogramsAMetre, "kg/m")} and it bears "
                + $"{Numerals.Shown(bears, "kg/m")} ({Marks.Name(heaviest.WeightMark)}); spread them over more trays, or set the supports "
                + "closer. What hangs over people is for a structural engineer to sign",
                pathway.Key.Name, pathway.Count(f => f.IsOverloaded), Kind.Severity,
                new Evidence("weight", heaviest.KilogramsAMetre, bears, "kg/m", Citation.OfPlan with { Mark = heaviest.WeightMark }));
        }
    }
}
