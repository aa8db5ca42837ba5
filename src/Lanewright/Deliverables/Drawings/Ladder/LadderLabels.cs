using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>The words at the right of a ladder.</summary>
internal static class LadderLabels
{
    private const double Size = 12;

    /// <summary>The labels of everything that has a height.</summary>
    public static IEnumerable<LadderLabel> Of(LadderModel model, LadderScale scale, LadderScale? bright, double width)
    {
        var unit = model.IsAbsolute ? "dBm" : "dB";
        var level = model.Start - model.Loss;
        var whole = "the whole loss is " + Numerals.Unit(model.Loss, "dB");
        yield return Make(scale.Y(level), width, "bold", "arrives with " + Numerals.Unit(level, unit), whole);
        foreach (var limit in model.Limits)
        {
            var check = limit.Check;
            if (check.Limit is not { } most)
            {
                yield return Make(scale.Y(level) + 60, width, "bold", "no " + limit.Words + " is known", check.Note);
                continue;
            }
            var y = scale.Y(model.Start - most);
            yield return Make(y, width, "bold", $"{limit.Words}: {Numerals.Unit(most, "dB")}", SourceOf(check),
                check.Name == CheckNames.PowerBudget ? check.Note : "");
            if (check.Margin is { } margin) yield return MarginLabel((y + scale.Y(level)) / 2, width, limit, margin);
        }
        if (bright is null || model.Top is not { Check.Value: { } value } top) yield break;
        yield return Make(bright.Y(value), width, "", $"brightest case arrives with {Numerals.Unit(value, unit)}",
            top.Check.Limit is null ? "the receiver's upper limit is not known" : "");
        if (top.Check.Limit is { } highest)
        {
            var isOutside = top.Check.Verdict == Verdict.Fail;
            yield return Make(bright.Y(highest), width, isOutside ? "alert" : "bold",
                $"receiver's upper limit: {Numerals.Unit(highest, unit)}{(isOutside ? ", EXCEEDED" : "")}", SourceOf(top.Check));
        }
    }

    private static LadderLabel MarginLabel(double y, double width, LadderLimit limit, double margin) => limit.Check.Verdict == Verdict.Fail
        ? Make(y, width, "alert", $"margin {Numerals.Unit(margin, "dB")}{limit.Margin}, over the limit")
        : Make(y, width, "bold", $"margin {Numerals.Unit(margin, "dB")}{limit.Margin}");

    private static string SourceOf(Check check) => check.Source is { } source ? $"{source} [{Marks.Name(source.Mark)}]" : "";

    private static LadderLabel Make(double y, double width, string style, string first, params ReadOnlySpan<string> more)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.AddRange(TextFit.Lines(first, width, Size, most: 2, bold: true));
        var heads = lines.Count;
        foreach (var text in more)
            if (text.Length > 0) lines.AddRange(TextFit.Lines(text, width, Size - 1.5, most: 2));
        return new LadderLabel(y, lines.ToImmutable(), heads, style);
    }
}
