using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Tries the schemes from the cheapest on and takes the first that works.</summary>
public static class LineLadder
{
    /// <summary>Spans that one long span is divided into at most.</summary>
    private const int MostSpans = 40;

    private static readonly ImmutableArray<LineScheme> Schemes =
    [
        LineScheme.Grey, LineScheme.CoarseDirect, LineScheme.DenseDirect, LineScheme.Coherent, LineScheme.Booster,
        LineScheme.Preamplifier, LineScheme.BoosterAndPreamplifier, LineScheme.InLine,
    ];

    /// <summary>The answer. Where a type is asked for, schemes with others are tried and told, and the design keeps the type.</summary>
    public static LineAnswer Of(LineQuestion question)
    {
        var tried = ImmutableArray.CreateBuilder<TriedScheme>();
        var kept = new List<LineDesign>();
        foreach (var scheme in Schemes)
        {
            var design = Try(question, scheme);
            if (design is null) continue;
            var isWanted = question.Type is not { } type || type.Name == design.TypeName;
            var reason = LineWords.Reason(design);
            if (!isWanted && design.Verdict == Verdict.Pass) reason += $"; {question.Type?.Name} is asked for";
            tried.Add(new TriedScheme(scheme, design.Verdict, reason));
            if (!isWanted) continue;
            kept.Add(design);
            if (design.Verdict == Verdict.Pass) return new LineAnswer(question, design, tried.ToImmutable());
        }
        return new LineAnswer(question, Nearest(kept) ?? Try(question, LineScheme.Grey) ?? kept[0], tried.ToImmutable());
    }

    /// <summary>The design in one scheme; null where the scheme makes no sense for the line.</summary>
    public static LineDesign? Try(LineQuestion question, LineScheme scheme) => scheme switch
    {
        LineScheme.Grey => GreyRung.Of(question),
        LineScheme.CoarseDirect or LineScheme.DenseDirect => DirectRung.Of(question, scheme),
        LineScheme.InLine => OverTypes(question, InLine),
        _ => OverTypes(question, (asked, type) => CoherentLine.Of(asked, type, scheme)),
    };

    private static LineDesign? OverTypes(LineQuestion question, Func<LineQuestion, WavelengthType, LineDesign?> design)
    {
        var types = question.Type is { } asked
            ? asked.IsCoherent ? [asked] : (IEnumerable<WavelengthType>)[]
            : question.Standards.WavelengthTypes.Where(t => t.IsCoherent && t.Rate == question.Rate);
        LineDesign? nearest = null;
        foreach (var type in types)
        {
            if (design(question, type) is not { } made) continue;
            if (made.Verdict == Verdict.Pass) return made;
            if (nearest is null || IsNearer(made, nearest)) nearest = made;
        }
        return nearest;
    }

    /// <summary>As few amplifiers as work; where none do, as many as leave most.</summary>
    private static LineDesign? InLine(LineQuestion question, WavelengthType type)
    {
        if (!question.MayDivide)
            return question.Spans.Length > 1 ? CoherentLine.Of(question, type, LineScheme.InLine) : null;
        LineDesign? nearest = null;
        for (var spans = 2; spans <= MostSpans; spans++)
        {
            var piece = question.Spans[0].Piece(spans);
            var divided = question with { Spans = [.. Enumerable.Repeat(piece, spans)], MayDivide = false };
            var made = CoherentLine.Of(divided, type, LineScheme.InLine);
            if (made.Verdict == Verdict.Pass) return made;
            if (nearest is null || IsNearer(made, nearest)) nearest = made;
            else if (made.Worst?.Margin < nearest.Worst?.Margin && piece.Loss.Value < question.Spans[0].Loss.Value / 4) break;
        }
        return nearest;
    }

    private static LineDesign? Nearest(List<LineDesign> designs)
    {
        LineDesign? nearest = null;
        foreach (var design in designs)
            if (nearest is null || IsNearer(design, nearest)) nearest = design;
        return nearest;
    }

    /// <summary>What cannot be proved is nearer than what fails; then fewer limits missed, then more margin.</summary>
    private static bool IsNearer(LineDesign one, LineDesign other)
    {
        if (one.Verdict != other.Verdict) return one.Verdict < other.Verdict;
        var (missed, others) = (Missed(one), Missed(other));
        if (missed != others) return missed < others;
        return (one.Worst?.Margin ?? default) > (other.Worst?.Margin ?? default);
    }

    private static int Missed(LineDesign design) => design.Checks.Count(c => c.Verdict == design.Verdict && !c.IsAdvice)
        + (design.Channels.IsEmpty ? 1 : 0);
}
