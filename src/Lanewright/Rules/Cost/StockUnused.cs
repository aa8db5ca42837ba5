using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Cost;

/// <summary>Stock the plan has no use for.</summary>
internal sealed class StockUnused() : Rule("LW2801", nameof(StockUnused), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var used = judgement.Parts.GroupBy(p => (p.Item.Name, p.Length)).ToDictionary(g => g.Key, g => g.Sum(p => p.FromStock));
        foreach (var stock in judgement.Plan.Stock.GroupBy(s => (s.Item.Name, s.Length)))
        {
            var onHand = stock.Sum(s => s.Quantity);
            var left = onHand - used.GetValueOrDefault(stock.Key);
            if (left <= 0) continue;
            var length = stock.Key.Length is { } l ? $" of {l}" : "";
            judgement.Add(this, stock.First().Span,
                $"{Numerals.Whole(left)} of {Numerals.Whole(onHand)} {stock.Key.Name}{length} stay in stock: nothing in the plan uses them",
                stock.Key.Name, left);
        }
    }
}
