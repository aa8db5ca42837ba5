using Lanewright.Engineering.Pathways;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A pathway whose corners and drops are tighter than its cables allow.</summary>
internal sealed class PathwayBendTight() : Rule("LW4114", nameof(PathwayBendTight))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var book = judgement.Pathways.Value;
        foreach (var need in BendNeed.Of(book, judgement.Plan.Standards))
        {
            if (need.Pathway.BendRadius is not { } radius) continue;
            if (!Rounding.IsBelow(radius.Millimetres, need.Radius.Value.Millimetres)) continue;
            var when = need.Pathway.IsDuct ? "while it is pulled" : "where it lies";
            judgement.Add(this, need.Pathway.Span,
                $"'{need.Pathway.FullName}' leads cables round {Numerals.Shown(radius.Millimetres, "mm")}, and {need.Cable.Name} wants "
                + $"{Numerals.Shown(need.Radius.Value.Millimetres, "mm")} {when}; take corners and drop-outs of a larger radius",
                need.Pathway.Name, 1, Kind.Severity,
                new Evidence("bend radius", radius.Millimetres, need.Radius.Value.Millimetres, "mm", need.Radius.Source));
        }
    }
}
