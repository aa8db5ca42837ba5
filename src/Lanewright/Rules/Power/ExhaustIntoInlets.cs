using Lanewright.Engineering.Heat;
using Lanewright.Findings;

namespace Lanewright.Rules.Power;

/// <summary>Two rows of which one breathes what the other blows into the aisle between them.</summary>
internal sealed class ExhaustIntoInlets() : Rule("LW4415", nameof(ExhaustIntoInlets), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var air in AisleAir.Of(judgement.Racks.Value).Where(a => a.IsMixed))
        {
            var (near, far) = (air.Aisle.Near, air.Aisle.Far);
            var (warm, cold) = air.Near.Blows && air.Far.Breathes ? (near, far) : (far, near);
            judgement.Add(this, near.Hall.Span,
                $"row {warm.Row} of {near.Hall.PlainName} blows into the aisle from which row {cold.Row} breathes, so that its inlets get "
                + "warmed air whatever the hall supplies; turn one of the two rows, lead the air apart, or order devices that breathe "
                + "the other way",
                $"{near.Hall.PlainName}/{near.Row}/{far.Row}");
        }
    }
}
