using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Racks on a floor with a limit whose own weight nobody states.</summary>
internal sealed class FloorUnproven() : Rule("LW4310", nameof(FloorUnproven), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Halls.All(h => h.FloorLoad is null)) return;
        foreach (var hall in judgement.Racks.Value.Racks.Where(r => r.Rack.Hall.FloorLoad is not null).GroupBy(r => r.Rack.Hall))
        {
            // What is too heavy without the rack's own weight is no open question: another rule says so.
            var open = hall.Where(r => r.Rack.Type.OwnWeight is null
                && !Rounding.IsAbove(FloorPressure.Of(r, judgement.Plan.Standards), hall.Key.FloorLoad ?? 0)).ToList();
            if (open.Count == 0) continue;
            judgement.Add(this, hall.Key.Span,
                $"what the empty racks of kind '{open[0].Rack.Type.Name}' weigh is not stated, so whether the floor bears "
                + $"{Numerals.Grouped(open.Count)} of them is unproven; state 'own-weight' of the kind of rack",
                hall.Key.Name, open.Count, Kind.Severity, new Evidence("floor load", null, hall.Key.FloorLoad, "kPa", null));
        }
    }
}
