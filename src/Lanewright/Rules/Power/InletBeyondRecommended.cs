using Lanewright.Engineering.Heat;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Air that is allowed and not recommended.</summary>
internal sealed class InletBeyondRecommended() : Rule("LW4407", nameof(InletBeyondRecommended), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var hall in judgement.Plan.Building.Halls)
        {
            if (hall.Inlet is not { } inlet) continue;
            var limits = InletLimits.Of(judgement.Plan.Standards, AirClasses.Of(hall), hall.Altitude ?? default);
            var (low, high) = (limits.RecommendedLow, limits.RecommendedHigh);
            var isWarm = Rounding.IsAbove(inlet.Celsius, high.Value.Celsius);
            if (!isWarm && !Rounding.IsBelow(inlet.Celsius, low.Value.Celsius)) continue;
            if (Rounding.IsAbove(inlet.Celsius, limits.AllowableHigh.Value.Celsius)) continue;
            if (Rounding.IsBelow(inlet.Celsius, limits.AllowableLow.Value.Celsius)) continue;
            var missed = isWarm ? high : low;
            judgement.Add(this, hall.Span,
                $"air reaches the equipment of {hall.Name} at {Numerals.Plain(inlet.Celsius)} C; {Numerals.Plain(low.Value.Celsius)} to "
                + $"{Numerals.Plain(high.Value.Celsius)} C are recommended, and class {limits.Class} allows it for a time",
                hall.Name, 1, Kind.Severity, new Evidence("inlet temperature", inlet.Celsius, missed.Value.Celsius, "degC", missed.Source));
        }
    }
}
