using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Chooses how each class of links is made. Classes whose links share a split cage are chosen together, so that one cage
/// gets one module; what is in stock is used first.</summary>
public sealed class LinkChooser
{
    /// <summary>Classes looked at before the first of them is chosen.</summary>
    private const int Batch = 64;

    private readonly LinkClasses classes;
    private readonly EarlierSolutions.Bank answers;
    private readonly Ranking ranking;
    private readonly StockLedger stock;

    private LinkChooser(Plan plan, LinkClasses classes, EarlierSolutions earlier)
    {
        this.classes = classes;
        answers = earlier.Under(new FinderContext(plan.Standards, plan.Catalogue, plan.Policy) { Stock = plan.Stock });
        ranking = new Ranking(plan.Policy);
        stock = new StockLedger(plan.Stock);
    }

    /// <summary>A choice for each class, in the order of the classes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="classes">Its classes.</param>
    /// <param name="earlier">Ways that were found before.</param>
    /// <param name="cancel">Breaks the work off.</param>
    internal static ImmutableArray<ClassChoice> Choose(
        Plan plan, LinkClasses classes, EarlierSolutions earlier, CancellationToken cancel)
    {
        var chooser = new LinkChooser(plan, classes, earlier);
        var options = new ParallelOptions { CancellationToken = cancel };
        var choices = new ClassChoice[classes.All.Length];
        // Finding takes time and touches nothing, so cores share it; choosing counts stock down and keeps to the order of the plan.
        foreach (var batch in ClassesTogether.Of(plan, classes).Chunk(Batch))
        {
            var found = new (LinkClass, FoundSolutions)[batch.Length][];
            var asked = Array.ConvertAll(batch, chooser.Ask);
            Parallel.For(0, batch.Length, options, i => found[i] = chooser.Find(asked[i]));
            foreach (var candidates in found) chooser.ChooseTogether(candidates, choices);
        }
        return [.. choices];
    }

    private (LinkClass Class, LinkClass Question)[] Ask(ImmutableArray<int> together) =>
        [.. together.Select(i => (classes.All[i], answers.QuestionOf(classes.All[i])))];

    private (LinkClass Class, FoundSolutions Found)[] Find((LinkClass Class, LinkClass Question)[] asked) =>
        [.. asked.Select(a => (a.Class, Of(a.Class, answers.All(a.Question))))];

    /// <summary>An answer knows trunks by what they are made of; the class knows which they are.</summary>
    private static FoundSolutions Of(LinkClass link, FoundSolutions answer) =>
        link.Through is { } way ? answer.Through(way) : answer;

    private void ChooseTogether((LinkClass Class, FoundSolutions Found)[] candidates, ClassChoice[] choices)
    {
        var shared = candidates.Length > 1 ? SharedPart(candidates) : null;
        foreach (var (link, found) in candidates)
        {
            choices[link.Index] = ChooseOne(link, found, shared);
        }
    }

    /// <summary>The part in the shared cage that serves all classes at the least total price; null when none does.</summary>
    private string? SharedPart((LinkClass Class, FoundSolutions Found)[] candidates)
    {
        string? best = null;
        var bestCost = (Verdict.Fail, decimal.MaxValue);
        var keys = candidates[0].Found.All.Select(s => KeyOf(candidates[0].Class, s)).Distinct().Order(StringComparer.Ordinal);
        foreach (var key in keys)
        {
            var cost = (Verdict.Pass, 0m);
            foreach (var (link, found) in candidates)
            {
                var first = ranking.Order(found.All.Where(s => KeyOf(link, s) == key), s => stock.CostOf(s, link.Count)).FirstOrDefault();
                if (first is null)
                {
                    cost = (Verdict.Fail, decimal.MaxValue);
                    break;
                }
                var worse = first.Verdict > cost.Item1 ? first.Verdict : cost.Item1;
                cost = (worse, cost.Item2 + stock.CostOf(first, link.Count));
            }
            if (cost.CompareTo(bestCost) >= 0) continue;
            best = key;
            bestCost = cost;
        }
        return best;
    }

    /// <summary>What sits in the split cage: its module with the cord that fans out of it, or the assembly.</summary>
    private static string KeyOf(LinkClass link, Solution solution)
    {
        var module = link.Shape == FanShape.ToEnd ? solution.ToModule : solution.FromModule;
        return module is null ? solution.Cable.Name : module.Name + "/" + solution.Cable.Name;
    }

    private ClassChoice ChooseOne(LinkClass link, FoundSolutions found, string? shared)
    {
        var usable = shared is null ? found.All : [.. found.All.Where(s => KeyOf(link, s) == shared)];
        var shares = ImmutableArray.CreateBuilder<ChosenShare>();
        var left = link.Count;
        ImmutableArray<Solution> ordered = [];
        while (left > 0)
        {
            // Where nothing is in stock the first links of a class are as dear as the last.
            ordered = shared is null && stock.IsEmpty ? found.ByBatchPrice : ranking.Order(usable, stock.PriceOf);
            if (ordered.IsEmpty) break;
            var best = ordered[0];
            var links = Math.Min(left, Math.Max(1, stock.LinksServed(best)));
            var price = Money.FromHundredths(stock.CostOf(best, links) / links);
            stock.Take(best, links);
            if (shares.Count > 0 && ReferenceEquals(shares[^1].Solution, best) && shares[^1].Price == price)
                shares[^1] = shares[^1] with { Links = shares[^1].Links + links };
            else shares.Add(new ChosenShare(best, links, price));
            left -= links;
        }
        return new ClassChoice(link, found.ByNewPrice, shares.ToImmutable());
    }
}
