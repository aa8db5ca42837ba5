using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules.Cost;

/// <summary>A total that rests on placeholder prices.</summary>
internal sealed class PricesInvented() : Rule("LW2802", nameof(PricesInvented), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var bought = judgement.Parts.Where(p => p.ToBuy > 0).ToList();
        var invented = bought.Where(p => p.Item.PriceMark == Mark.Invented).ToList();
        if (invented.Count == 0 || judgement.Plan.Sources.IsEmpty) return;
        var total = Money.Zero;
        foreach (var part in invented) total += part.Total;
        var isMixed = judgement.Plan.Currency != PlanLanguage.ShippedCurrency;
        var unit = isMixed ? $" in {PlanLanguage.ShippedCurrency}, added as if they were {judgement.Plan.Currency}" : "";
        judgement.Add(this, judgement.Plan.Sources[0].Span(0, 0),
            $"{invented.Count} of {bought.Count} lines of the parts list, {Numerals.Grouped(total.Units)} {judgement.Plan.Currency}, "
            + $"carry placeholder prices of the shipped catalogue{unit}, and its powers are placeholders of the usual size; "
            + "put quoted prices and data-sheet powers into a catalogue of your own",
            "", invented.Count, isMixed ? Severity.Warning : Severity.Advice);
    }
}
