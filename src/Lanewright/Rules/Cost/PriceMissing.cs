using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Cost;

/// <summary>Parts to be bought whose price nobody has stated, so that they count for nothing.</summary>
internal sealed class PriceMissing() : Rule("LW2803", nameof(PriceMissing), Severity.Warning)
{
    private const int MostNamed = 5;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var missing = judgement.Parts.Where(p => p.IsMissingFromTotal).Select(p => p.Item.Name).Distinct().ToList();
        if (missing.Count == 0 || judgement.Plan.Sources.IsEmpty) return;
        var more = missing.Count > MostNamed ? $" and {Numerals.Whole(missing.Count - MostNamed)} more" : "";
        var have = missing.Count == 1 ? "has" : "have";
        judgement.Add(this, judgement.Plan.Sources[0].Span(0, 0),
            $"{string.Join(", ", missing.Take(MostNamed))}{more} {have} no price and count as nothing in every total; "
            + "state prices in a catalogue of your own", count: missing.Count);
    }
}
