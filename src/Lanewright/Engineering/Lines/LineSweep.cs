using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A design of one scheme asked again with one quantity changed step by step.</summary>
/// <param name="Quantity">What changes: <c>length</c>, <c>channels</c> or <c>launch</c>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Of">What the margin is one of: signal over noise, or loss where nothing adds noise.</param>
/// <param name="Points">Values with the smallest margin, where one is known, the verdict, and the comparisons that fail.</param>
/// <param name="WhyNone">Why there are no points; empty where there are.</param>
public sealed record LineSweep(
    string Quantity, string Unit, string Of, ImmutableArray<(double Value, double? MarginDb, Verdict Verdict, string Failing)> Points,
    string WhyNone = "")
{
    /// <summary>What the margin is one of where amplifiers and glass add noise.</summary>
    public const string Noise = "signal over noise";

    /// <summary>What it is one of where nothing does.</summary>
    public const string Loss = "loss";

    /// <summary>What may be swept.</summary>
    public static ImmutableArray<string> Quantities { get; } = ["length", "channels", "launch"];

    /// <summary>Sweeps an answer, with the scheme and the type of its design.</summary>
    public static LineSweep Over(LineAnswer answer, string quantity)
    {
        var design = answer.Design;
        var question = answer.Question with { Spans = design.Spans.IsEmpty ? answer.Question.Spans : design.Spans };
        if (design.TypeName.Length == 0) return None(quantity, "there is no type to sweep with");
        if (quantity == "launch" && design.Launch is null)
            return None(quantity, "the launch is that of the transmitters: no booster stands behind them");
        if (question.Standards.Wavelength(design.TypeName) is { IsCoherent: true } type)
            return Made(Noise, q => CoherentLine.Of(q, type, design.Scheme), made => made.Worst?.Margin?.Value);
        return Made(
            Loss,
            q => design.Scheme == LineScheme.Grey ? GreyRung.Of(q, design.TypeName) : DirectRung.Of(q, design.Scheme, design.TypeName),
            // What the receivers have left; that light may be too strong on short fibre is among what fails.
            made => made.Checks.FirstOrDefault(c => c.Name is LineCheckNames.ReceiveLow or CheckNames.ChannelLoss)?.Margin);

        LineSweep Made(string of, Func<LineQuestion, LineDesign> make, Func<LineDesign, double?> margin)
        {
            var steps = quantity switch
            {
                "length" => Lengths(question),
                "channels" => Channels(question, design),
                _ => Launches(question, design),
            };
            return new LineSweep(quantity, UnitOf(quantity), of, [.. steps.Select(s => Point(s.Value, make(s.Asked), margin))]);
        }
    }

    private static string UnitOf(string quantity) => quantity switch { "length" => "km", "channels" => "", _ => "dBm" };

    private static LineSweep None(string quantity, string why) => new(quantity, UnitOf(quantity), Noise, [], why);

    private static (double, double?, Verdict, string) Point(double value, LineDesign made, Func<LineDesign, double?> margin) => (value,
        margin(made), made.Verdict,
        string.Join(", ", made.Checks.Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice).Select(c => c.Name).Distinct()));

    /// <summary>From a quarter of the length to twice as far, in twenty-eight steps.</summary>
    private static IEnumerable<(double Value, LineQuestion Asked)> Lengths(LineQuestion question)
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

    /// <summary>From one channel to as many as there is room for; multiplexers stay where the design has them, also for a single
    /// channel.</summary>
    private static IEnumerable<(double Value, LineQuestion Asked)> Channels(LineQuestion question, LineDesign design)
    {
        var grid = question.Standards.Grid;
        var room = ChannelPlan.Room(grid.BandRoom.Value, question.Channels.Spacing);
        if (design.Scheme == LineScheme.CoarseDirect) room = Math.Min(room, grid.CoarseChannels);
        const int most = 32;
        var step = Math.Max(1, room / most);
        var kept = question with { Equipment = question.Equipment with { AlwaysMultiplexes = question.Multiplexes } };
        for (var count = 1; count <= room; count += count == 1 && step > 1 ? step - 1 : step)
            if (ChannelPlan.Middle(grid, question.Channels.Spacing, count) is { } plan) yield return (count, kept with { Channels = plan });
    }

    /// <summary>Eight decibels to either side of the launch, in halves.</summary>
    private static IEnumerable<(double Value, LineQuestion Asked)> Launches(LineQuestion question, LineDesign design)
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
