using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray or duct that holds more cables than it may.</summary>
internal sealed class PathwayOverfull() : Rule("LW4101", nameof(PathwayOverfull))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var standards = judgement.Plan.Standards;
        foreach (var pathway in judgement.Pathways.Value.Fills.GroupBy(f => f.Pathway))
        {
            var over = pathway.Where(f => f.Fill.Value > f.Most(standards).Value).ToList();
            if (over.MaxBy(f => f.Fill) is not { } worst) continue;
            var most = worst.Most(standards);
            judgement.Add(this, pathway.Key.Span,
                $"'{pathway.Key.Name}' in {pathway.Key.Hall.Name} holds {Numerals.Grouped(worst.Cables)} cables and is "
                + $"{Numerals.Shown(worst.Fill.Percent, "%")} full, and {Numerals.Shown(most.Value * 100, "%")} is the most; no other "
                + $"way has room for what is too much {Places.Of(worst)}; make it wider, lay another beside it, or take thinner cables",
                pathway.Key.Name, over.Count, Kind.Severity, new Evidence("fill", worst.Fill.Value, most.Value, "", most.Source));
        }
    }
}
