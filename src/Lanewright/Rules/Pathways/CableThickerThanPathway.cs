using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A cable that does not go into its pathway at all.</summary>
internal sealed class CableThickerThanPathway() : Rule("LW4116", nameof(CableThickerThanPathway))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var group in judgement.Pathways.Value.CablesByPathway().GroupBy(c => c.Pathway))
        {
            var (pathway, room) = (group.Key, Length.Min(group.Key.Width, group.Key.Depth));
            var thickest = group.MaxBy(c => c.Cable.Diameter).Cable;
            if (!Rounding.IsAbove(thickest.Diameter.Millimetres, room.Millimetres)) continue;
            judgement.Add(this, pathway.Span,
                $"{thickest.Name} is {Numerals.Shown(thickest.Diameter.Millimetres, "mm")} thick and '{pathway.FullName}' has room for "
                + $"{Numerals.Shown(room.Millimetres, "mm")}; make the pathway larger",
                pathway.Name, 1, Kind.Severity, new Evidence("diameter", thickest.Diameter.Millimetres, room.Millimetres, "mm", null));
        }
    }
}
