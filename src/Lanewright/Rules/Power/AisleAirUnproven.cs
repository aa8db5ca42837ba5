using Lanewright.Engineering.Heat;
using Lanewright.Findings;

namespace Lanewright.Rules.Power;

/// <summary>Rows that share an aisle in a hall whose inlet air is stated, and nobody says where their fronts are.</summary>
internal sealed class AisleAirUnproven() : Rule("LW4416", nameof(AisleAirUnproven), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var open = AisleAir.Of(judgement.Racks.Value).Where(a => a.IsOpen && a.Aisle.Near.Hall.Inlet is not null);
        foreach (var hall in open.GroupBy(a => a.Aisle.Near.Hall))
        {
            var first = hall.First().Aisle;
            judgement.Add(this, hall.Key.Span,
                $"which sides of rows {first.Near.Row} and {first.Far.Row} of {hall.Key.PlainName} are their fronts is not said, so "
                + "whether one breathes what the other blows into the aisle between them is unproven; state 'fronts' of the rows",
                hall.Key.PlainName, hall.Count());
        }
    }
}
