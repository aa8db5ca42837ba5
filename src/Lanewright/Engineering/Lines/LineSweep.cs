using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A design of one scheme asked again with one quantity changed step by step.</summary>
/// <param name="Quantity">What changes: <c>length</c>, <c>channels</c> or <c>launch</c>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Points">Values with the smallest margin of signal over noise, where one is known, the verdict, and the comparisons that
/// fail.</param>
public sealed record LineSweep(
    string Quantity, string Unit, ImmutableArray<(double Value, double? MarginDb, Verdict Verdict, string Failing)> Points)
{
    /// <summary>What may be swept.</summary>
    public static ImmutableArray<string> Quantities { get; } = ["length", "channels", "launch"];

    /// <summary>Sweeps a coherent answer; nothing for one that is not coherent.</summary>
    public static LineSweep? Of(LineAnswer answer, string quantity)
    {
        var design = answer.Design;
        var question = answer.Question with { Spans = design.Spans };
        if (question.Standards.Wavelength(design.TypeName) is not { IsCoherent: true } type) return null;
        return quantity switch
        {
            "length" => Make(quantity, "km", Lengths(question)),
            "channels" => Make(quantity, "", Channels(question)),
            _ => Make(quantity, "dBm", Launches(question, design)),
        };

        LineSweep Make(string name, string unit, IEnumerable<(double Value, LineQuestion Asked)> steps) => new(name, unit,
            [.. steps.Select(s => Point(s.Value, CoherentLine.Of(s.Asked, type, design.Scheme)))]);
    }

    private static (double, double?, Verdict, string) Point(double value, LineDesign made) => (value, made.Worst?.Margin?.Value,
        made.Verdict, string.Join(", ", made.Checks.Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice).Select(c => c.Name).Distinct()));

    /// <summary>From a quarter of the length to twice as far, in twenty-eight steps.</summary>
    private static IEnumerable<(double, LineQuestion)> Lengths(LineQuestion question)
    {
        const int steps = 32;
        for (var step = steps / 8; step <= steps; step++)
        {
            var share = 2.0 * step / steps;
            ImmutableArray<LineSpan> spans =
                [.. question.Spans.Select(s => s with { Length = s.Length * share, MeasuredLoss = s.MeasuredLoss * share })];
            yield return (Math.Round(question.Length.Kilometres * share, 3), question with { Spans = spans });
        }
    }

    private static IEnumerable<(double, LineQuestion)> Channels(LineQuestion question)
    {
        var room = ChannelPlan.Room(question.Standards.Grid.BandRoom.Value, question.Channels.Spacing);
        const int most = 32;
        var step = Math.Max(1, room / most);
        for (var count = 1; count <= room; count += count == 1 && step > 1 ? step - 1 : step)
            if (ChannelPlan.Middle(question.Standards.Grid, question.Channels.Spacing, count) is { } plan)
                yield return (count, question with { Channels = plan });
    }

    /// <summary>Eight decibels to either side of the launch, in halves.</summary>
    private static IEnumerable<(double, LineQuestion)> Launches(LineQuestion question, LineDesign design)
    {
        if (design.Launch is not { } now) yield break;
        const int sides = 16;
        for (var step = -sides; step <= sides; step++)
        {
            var launch = now + Decibels.From(step / 2.0);
            yield return (Math.Round(launch.Dbm, 2), question with { Launch = launch });
        }
    }
}
