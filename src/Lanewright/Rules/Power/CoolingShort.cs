using Lanewright.Engineering.Heat;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>A hall whose equipment gives off more heat than is carried away.</summary>
internal sealed class CoolingShort() : Rule("LW4405", nameof(CoolingShort))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Halls.All(h => h.Cooling is null)) return;
        foreach (var heat in HallHeat.Of(judgement.Racks.Value))
        {
            if (heat.Hall.Cooling is not { } cooling || !Rounding.IsAbove(heat.Maximum.Value, cooling.Value)) continue;
            judgement.Add(this, heat.Hall.Span,
                $"equipment in {heat.Hall.Name} may give off {Numerals.Shown(heat.Maximum.Value, "W")} (usual load "
                + $"{Numerals.Shown(heat.Typical.Value, "W")}) and {Numerals.Shown(cooling.Value, "W")} are carried away; add "
                + "cooling or move "
                + "equipment to another hall",
                heat.Hall.Name, 1, Kind.Severity, new Evidence("heat", heat.Maximum.Value, cooling.Value, "W", null));
        }
    }
}
