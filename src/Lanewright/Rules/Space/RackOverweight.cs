using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>A rack that holds more than it may.</summary>
internal sealed class RackOverweight() : Rule("LW4301", nameof(RackOverweight))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Racks.All(r => r.Type.WeightLimit is null)) return;
        foreach (var row in judgement.Racks.Value.Racks.GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var over = row.Where(r => r.Rack.Type.WeightLimit is { } most && Rounding.IsAbove(r.Weight.Kilograms, most.Kilograms)).ToList();
            if (over.MaxBy(r => r.Weight) is not { Rack.Type.WeightLimit: { } limit } worst) continue;
            judgement.Add(this, RackPlaces.SpanOf(judgement, worst),
                $"{RackPlaces.WithMore(worst.Rack.Name, over.Count)} holds {Numerals.Shown(worst.Weight.Kilograms, "kg")} and "
                + $"may hold {limit}, cables not counted; move equipment to other racks, the heaviest lowest, or take racks that are "
                + "rated for it",
                worst.Rack.Name, over.Count, Kind.Severity, new Evidence("weight", worst.Weight.Kilograms, limit.Kilograms, "kg", null));
        }
    }
}
