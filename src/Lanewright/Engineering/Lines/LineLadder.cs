using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Tries the schemes in their order and takes the cheapest that works; where prices are not known, the first.</summary>
public static class LineLadder
{
    /// <summary>Stretches between amplifiers that are tried at most.</summary>
    private const int MostStretches = 120;

    private static readonly ImmutableArray<LineScheme> Schemes =
    [
        LineScheme.Grey, LineScheme.CoarseDirect, LineScheme.DenseDirect, LineScheme.Coherent, LineScheme.Booster,
        LineScheme.Preamplifier, LineScheme.BoosterAndPreamplifier, LineScheme.InLine,
    ];

    /// <summary>The answer: the first scheme that works, unless one further up costs less. Where a type is asked for, schemes with others
    /// are tried and told, and the design keeps the type.</summary>
    public static LineAnswer Of(LineQuestion question)
    {
        var prices = new LadderPrices(question);
        var tried = new List<TriedScheme>();
        var kept = new List<LineDesign>();
        var unwanted = new HashSet<int>();
        (LineDesign Design, LinePrice? Price, int Tried)? best = null;
        foreach (var scheme in Schemes)
        {
            // A price that is not known stands against none, so that the order of the ladder decides.
            if (best is { } found && !(found.Price?.Total is { } most && prices.MayBeBelow(most, scheme))) continue;
            if (Try(question, scheme, prices) is not { } design)
            {
                if (scheme == LineScheme.Coherent && question.Type is null && !prices.Types(scheme).Any())
                    tried.Add(new TriedScheme(scheme, Verdict.Fail, $"no coherent type of {question.Rate} is known", null));
                continue;
            }
            var isWanted = question.Type is not { } type || type.Name == design.TypeName;
            var reason = LineWords.Reason(design, question.LeastMargin);
            if (!isWanted && design.Verdict == Verdict.Pass) reason += $"; {question.Type?.Name} is asked for";
            var price = prices.Of(design);
            tried.Add(new TriedScheme(scheme, design.Verdict, reason, price));
            if (!isWanted) unwanted.Add(tried.Count - 1);
            if (!isWanted) continue;
            kept.Add(design);
            if (design.Verdict != Verdict.Pass) continue;
            if (best is null || price?.Total < best?.Price?.Total) best = (design, price, tried.Count - 1);
        }
        if (best is { } taken)
            return new LineAnswer(question, taken.Design, Compared(tried, taken.Tried, unwanted), taken.Price);
        var nearest = Nearest(kept) ?? Try(question, LineScheme.Grey, prices) ?? kept[0];
        return new LineAnswer(question, nearest, [.. tried], prices.Of(nearest));
    }

    /// <summary>The schemes with what each that would work as well costs more than the one that is taken.</summary>
    private static ImmutableArray<TriedScheme> Compared(List<TriedScheme> tried, int taken, HashSet<int> unwanted)
    {
        if (tried[taken].Price?.Total is not { } least) return [.. tried];
        return [.. tried.Select((t, i) => i != taken && t.Verdict == Verdict.Pass && t.Price?.Total is { } price && price > least
            && !unwanted.Contains(i)
                ? t with { Reason = $"{t.Reason}; its parts cost {Numerals.Grouped((price - least).Units)} more than those of "
                    + LineWords.Name(tried[taken].Scheme) }
                : t)];
    }

    /// <summary>The design in one scheme; null where the scheme makes no sense for the line.</summary>
    public static LineDesign? Try(LineQuestion question, LineScheme scheme) => Try(question, scheme, new LadderPrices(question));

    private static LineDesign? Try(LineQuestion question, LineScheme scheme, LadderPrices prices) => scheme switch
    {
        LineScheme.Grey => GreyRung.Of(question),
        LineScheme.CoarseDirect or LineScheme.DenseDirect => DirectRung.Of(question, scheme),
        LineScheme.InLine => OverTypes(question, scheme, prices, InLine),
        _ => OverTypes(question, scheme, prices, (asked, type) => CoherentLine.Of(asked, type, scheme)),
    };

    /// <summary>The cheapest type that works; where no price is known, the first; where none works, the nearest.</summary>
    private static LineDesign? OverTypes(
        LineQuestion question, LineScheme scheme, LadderPrices prices, Func<LineQuestion, WavelengthType, LineDesign?> design)
    {
        LineDesign? nearest = null;
        (LineDesign Design, Money? Price)? best = null;
        foreach (var type in prices.Sorted(prices.Types(scheme)))
        {
            if (best is { } found && !(found.Price is { } most && prices.MayBeBelow(most, scheme, type))) continue;
            if (design(question, type) is not { } made) continue;
            if (made.Verdict != Verdict.Pass)
            {
                if (nearest is null || IsNearer(made, nearest)) nearest = made;
                continue;
            }
            var price = prices.Of(made)?.Total;
            if (best is null || price < best?.Price) best = (made, price);
        }
        return best?.Design ?? nearest;
    }

    /// <summary>As few amplifiers as work; where none do, as many as leave most.</summary>
    private static LineDesign? InLine(LineQuestion question, WavelengthType type)
    {
        var highest = question.Equipment.InLine?.GainMax?.Value;
        LineDesign? nearest = null;
        var (clearest, falls) = (default(Decibels?), 0);
        for (var stretches = 2; stretches <= MostStretches; stretches++)
        {
            if (AmplifierPlaces.Of(question.Spans, stretches, highest) is not { } spans) break;
            if (highest is { } most && Rounding.IsAbove(Stretches.MostLoss(spans, LineScheme.InLine).Value, most.Value)) continue;
            var made = CoherentLine.Of(question with { Spans = spans }, type, LineScheme.InLine);
            if (made.Verdict == Verdict.Pass) return made;
            if (nearest is null || IsNearer(made, nearest)) nearest = made;
            // Penalties rise in steps, and what a step took the next amplifiers may win back; but once they only add noise, more
            // still will not help.
            var clear = made.Worst?.GsnrInReference;
            falls = clear < clearest ? falls + 1 : 0;
            clearest = clear;
            if (falls >= FallsThatTell) return nearest;
        }
        return nearest ?? (question.Spans.Length > 1 ? CoherentLine.Of(question, type, LineScheme.InLine) : null);
    }

    /// <summary>Settings in tenths make margins waver a little from one amplifier to the next.</summary>
    private const int FallsThatTell = 3;

    private static LineDesign? Nearest(List<LineDesign> designs)
    {
        LineDesign? nearest = null;
        foreach (var design in designs)
            if (nearest is null || IsNearer(design, nearest)) nearest = design;
        return nearest;
    }

    /// <summary>What cannot be proved is nearer than what fails; then what lacks fewer decibels, then fewer limits missed, then more
    /// margin where any is lacking: what no level or noise stands against gains nothing by more of it, and the first is the
    /// cheapest.</summary>
    private static bool IsNearer(LineDesign one, LineDesign other)
    {
        if (one.Verdict != other.Verdict) return one.Verdict < other.Verdict;
        var (lacks, lacksOther) = (Lacks(one), Lacks(other));
        if (lacks != lacksOther) return lacks < lacksOther;
        var (missed, others) = (Missed(one), Missed(other));
        if (missed != others) return missed < others;
        if (lacks == 0) return false;
        return (one.Worst?.Margin ?? default) > (other.Worst?.Margin ?? default);
    }

    /// <summary>Decibels by which the worst of its levels and noises misses its limit; without end where none could be reckoned.</summary>
    private static double Lacks(LineDesign design) =>
        design.Tightest?.Margin is { } margin ? Math.Max(0, -margin) : double.PositiveInfinity;

    private static int Missed(LineDesign design) => design.Checks.Count(c => c.Verdict == design.Verdict && !c.IsAdvice)
        + (design.Channels.IsEmpty ? 1 : 0);
}
