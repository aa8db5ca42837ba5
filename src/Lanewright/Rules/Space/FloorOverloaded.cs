using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Racks that weigh more than the floor below them bears.</summary>
internal sealed class FloorOverloaded() : Rule("LW4302", nameof(FloorOverloaded))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Halls.All(h => h.FloorLoad is null)) return;
        foreach (var hall in judgement.Racks.Value.Racks.GroupBy(r => r.Rack.Hall))
        {
            if (hall.Key.FloorLoad is not { } limit) continue;
            var loads = hall
                .Select(r => (Contents: r, Load: FloorPressure.Of(r, judgement.Plan.Standards)))
                .Where(r => Rounding.IsAbove(r.Load, limit))
                .ToList();
            if (loads.Count == 0) continue;
            var (worst, load) = loads.MaxBy(r => r.Load);
            var more = loads.Count > 1 ? $" (and {Numerals.Whole(loads.Count - 1)} more)" : "";
            judgement.Add(this, hall.Key.Span,
                $"rack {worst.Rack.Name}{more} and what stands in it press on the floor with {Numerals.Shown(load, "kPa")} over its "
                + $"footprint, and the floor bears {Numerals.Plain(limit)} kPa; spread the weight "
                + "over more racks or have the floor judged by a structural engineer",
                hall.Key.Name, loads.Count, Kind.Severity, new Evidence("floor load", load, limit, "kPa", null));
        }
    }
}
