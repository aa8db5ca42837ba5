using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Bundles too heavy for one person to lift.</summary>
internal sealed class BundleHeavy() : Rule("LW4118", nameof(BundleHeavy), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Pathways.Value.Net is null) return;
        var limit = judgement.Plan.Standards.Facility("lift", "one-person");
        var heavy = judgement.Pulls.Value.Bundles
            .Where(b => Rounding.IsAbove(b.Kilograms, limit.Value) && b.Way is { Stretches.IsEmpty: false }).ToList();
        if (heavy.MaxBy(b => b.Kilograms) is not { Way: { } way } worst) return;
        judgement.Add(this, judgement.Pathways.Value.Fills[way.Stretches[0]].Pathway.Span,
            $"bundle {worst.Name} from {judgement.Plan.Building.Racks[worst.From].Name} to "
            + $"{judgement.Plan.Building.Racks[worst.To].Name} weighs "
            + $"{Numerals.Shown(worst.Kilograms, "kg")}, and {Numerals.Shown(limit.Value, "kg")} is the most for one person in the best "
            + $"posture; pull it with {Numerals.Whole(worst.Persons(judgement.Plan.Standards) ?? 2)} or with a winch, from a platform and "
            + "never from the tray",
            worst.Name, heavy.Count, Kind.Severity, new Evidence("weight", worst.Kilograms, limit.Value, "kg", limit.Source));
    }
}
