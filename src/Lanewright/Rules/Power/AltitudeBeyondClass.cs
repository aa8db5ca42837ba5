using Lanewright.Engineering.Heat;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>A hall that lies higher than the class of its equipment reaches.</summary>
internal sealed class AltitudeBeyondClass() : Rule("LW4408", nameof(AltitudeBeyondClass))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var hall in judgement.Plan.Building.Halls)
        {
            if (hall.Altitude is not { } height) continue;
            var highest = InletLimits.Of(judgement.Plan.Standards, AirClasses.Of(hall), height).Highest;
            if (!Rounding.IsAbove(height.Metres, highest.Value.Metres)) continue;
            judgement.Add(this, hall.Span,
                $"{hall.Name} lies {Numerals.Shown(height.Metres, "m")} above the sea, and class {AirClasses.Of(hall)} ends at "
                + $"{Numerals.Shown(highest.Value.Metres, "m")}; ask the makers for equipment that is rated for the height",
                hall.Name, 1, Kind.Severity, new Evidence("altitude", height.Metres, highest.Value.Metres, "m", highest.Source));
        }
    }
}
