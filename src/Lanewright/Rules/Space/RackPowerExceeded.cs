using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>A rack that may draw more than can be fed and cooled in it.</summary>
internal sealed class RackPowerExceeded() : Rule("LW4305", nameof(RackPowerExceeded))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Racks.All(r => r.Type.PowerLimit is null)) return;
        foreach (var row in judgement.Racks.Value.Racks.GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var over = row.Where(r => r.Rack.Type.PowerLimit is { } most && Rounding.IsAbove(r.Maximum.Value, most.Value)).ToList();
            if (over.MaxBy(r => r.Maximum) is not { Rack.Type.PowerLimit: { } limit } worst) continue;
            judgement.Add(this, RackPlaces.SpanOf(judgement, worst),
                $"{RackPlaces.WithMore(worst.Rack.Name, over.Count)} may draw {Numerals.Shown(worst.Maximum.Value, "W")} at the most "
                    + $"and {Numerals.Shown(limit.Value, "W")} can "
                + $"be fed and cooled there (usual load {Numerals.Shown(worst.Typical.Value, "W")}); spread its devices over more racks",
                worst.Rack.Name, over.Count, Kind.Severity, new Evidence("power", worst.Maximum.Value, limit.Value, "W", null));
        }
    }
}
