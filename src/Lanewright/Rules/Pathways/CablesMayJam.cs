using Lanewright.Engineering.Pathways;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Three cables in a duct that may lie side by side and wedge at a bend.</summary>
internal sealed class CablesMayJam() : Rule("LW4111", nameof(CablesMayJam), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var standards = judgement.Plan.Standards;
        foreach (var duct in judgement.Pathways.Value.Fills.Where(f => JamRatio.MayJam(f, standards)).GroupBy(f => f.Pathway))
        {
            var ratio = JamRatio.Of(duct.First()) ?? 0;
            var from = standards.Facility("duct", "jam-from");
            judgement.Add(this, duct.Key.Span,
                $"'{duct.Key.FullName}' holds three cables and is {Numerals.Fixed(ratio, 2)} times as wide as one of them; between "
                + $"{Numerals.Plain(from.Value)} and {Numerals.Plain(standards.Facility("duct", "jam-to").Value)} three cables may "
                + "slip side by side and wedge at a bend; take a duct of another width, or pull them bound together",
                duct.Key.Name, duct.Count(), Kind.Severity,
                new Evidence("inside over outside diameter", ratio, from.Value, "", from.Source));
        }
    }
}
