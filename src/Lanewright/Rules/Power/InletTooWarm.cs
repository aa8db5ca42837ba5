using Lanewright.Engineering.Heat;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Air that is warmer or colder than a class of equipment allows.</summary>
internal sealed class InletTooWarm() : Rule("LW4406", nameof(InletTooWarm))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var hall in judgement.Plan.Building.Halls)
        {
            if (hall.Inlet is not { } inlet) continue;
            var limits = InletLimits.Of(judgement.Plan.Standards, AirClasses.Of(hall), hall.Altitude ?? default);
            var (low, high) = (limits.AllowableLow, limits.AllowableHigh);
            var isWarm = Rounding.IsAbove(inlet.Celsius, high.Value.Celsius);
            if (!isWarm && !Rounding.IsBelow(inlet.Celsius, low.Value.Celsius)) continue;
            var missed = isWarm ? high : low;
            judgement.Add(this, hall.Span,
                $"air reaches the equipment of {hall.Name} at {Numerals.Plain(inlet.Celsius)} C, and class {limits.Class} allows "
                + $"{Numerals.Plain(low.Value.Celsius)} to {Numerals.Shown(high.Value.Celsius, "C")}"
                + (hall.Altitude is { } height && height.Metres > 0 ? $" at {Numerals.Shown(height.Metres, "m")} above the sea" : "")
                + (isWarm ? "; supply cooler air" : "; supply warmer air") + ", or take equipment of a wider class",
                hall.Name, 1, Kind.Severity, new Evidence("inlet temperature", inlet.Celsius, missed.Value.Celsius, "degC", missed.Source));
        }
    }
}
