using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>The spans of a design in words: alike ones together, with what each loses and to what.</summary>
public static class LineSpanWords
{
    private const int MostTold = 12;

    /// <summary>A line of text for spans that are alike.</summary>
    public static IEnumerable<string> Of(ImmutableArray<LineSpan> spans)
    {
        var alike = spans.GroupBy(s => (Length: Math.Round(s.Length.Metres), Loss: Math.Round(s.Loss.Value, 3), Words: Parts(s))).ToList();
        foreach (var group in alike.Take(MostTold))
        {
            var count = group.Count() > 1 ? $"{Numerals.Whole(group.Count())} spans of " : "span of ";
            yield return $"{count}{Numerals.Shown(group.First().Length.Kilometres, "km")}, "
                + $"{Numerals.Shown(group.Key.Loss, "dB")}: {group.Key.Words}";
        }
        if (alike.Count > MostTold) yield return $"and {Numerals.Whole(alike.Count - MostTold)} more kinds of spans";
    }

    /// <summary>How margins over several spans are meant, or why none is told as expected; empty for one span, or where there is no
    /// margin at all.</summary>
    public static string OfExpected(LineDesign design)
    {
        if (design.Spans.Length == 1 || !design.Channels.Any(c => c.Margin is not null)) return "";
        return design.Channels.Any(c => c.ExpectedMargin is not null)
            ? "the margin that decides takes noise of the glass to add up in step from span to span, as that of Gaussian symbols does; the "
                + "expected one adds it as powers, which stays above what propagated 16QAM and QPSK show over up to ten spans"
            : "no expected margin is told: none was held against propagated symbols over such spans, and the plain model stands";
    }

    /// <summary>Where the in-line amplifiers of a route stand and where light goes on without one, in a sentence; empty where every
    /// joint has one, or none has.</summary>
    public static string OfPlaces(LineRoute route)
    {
        var joints = LineJoint.Of(route);
        var (with, without) = (joints.Where(j => !j.GoesOn).ToList(), joints.Where(j => j.GoesOn).ToList());
        return with.Count == 0 || without.Count == 0 ? ""
            : $"in-line {(with.Count == 1 ? "amplifier" : "amplifiers")} at {List(with)}; patched through without one at {List(without)}";
    }

    private static string List(List<LineJoint> joints) => joints.Count <= MostTold
        ? string.Join(", ", joints.Select(j => j.Site))
        : $"{string.Join(", ", joints.Take(MostTold - 1).Select(j => j.Site))} and {Numerals.Whole(joints.Count - MostTold + 1)} more";

    private static string Parts(LineSpan span) => string.Join(", ", span.Parts.Select(p => p.What switch
    {
        "connectors" => $"{Numerals.Whole(span.Connectors)} mated pairs {Numerals.Shown(p.Loss.Value, "dB")}",
        "splices" => $"{Numerals.Whole(span.Splices)} splices {Numerals.Shown(p.Loss.Value, "dB")}",
        _ => $"{p.What} {Numerals.Shown(p.Loss.Value, "dB")}",
    }));
}
