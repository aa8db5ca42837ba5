using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabrics;

/// <summary>The option sheet: the options for a fabric side by side, each with its tiers and with bars on scales they share.</summary>
public static class OptionSheet
{
    /// <summary>Name of its file.</summary>
    public const string Name = "option-sheet";

    private const double Gap = 22;
    private const double LineStep = 14;
    private const double SketchTop = Sheet.Top + 44;
    private const double WordsTop = SketchTop + TierSketch.Height + 20;
    private const double SmallSize = 10.5;
    private const int MostWords = 11;

    /// <summary>Writes the sheet.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="plan">The plan the question was asked in.</param>
    /// <param name="study">The answer; it has options.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    public static void Write(MarkupWriter markup, Plan plan, FabricStudy study, bool isFile)
    {
        var options = study.Answer.Options;
        var width = (Sheet.Width - (2 * Sheet.Margin) - (Gap * (options.Length - 1))) / options.Length;
        var words = options.Select(o => Words(o, width)).ToList();
        var barsTop = WordsTop + (words.Max(w => w.Length) * LineStep) + 18;
        var lost = Lost(study, plan.Currency);
        var legendTop = barsTop + OptionBars.Height + 26;
        var bottom = legendTop + 14 + (lost.Length * LineStep);
        var head = new SheetHead(Name, "Options for the fabric", Subtitle(study.Wanted), Description(study, plan.Currency));
        var block = TitleBlock.Of(plan, plan.Name,
            ("hosts", Numerals.Grouped(options[0].Hosts), 1.2),
            ("options", Numerals.Whole(options.Length), 1),
            ("cheapest over the years", FabricShapes.Title(options[0].Shape), 2.4),
            ("prices in", plan.Currency, 1.2));
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            var bars = new OptionBars(options, study.Wanted.Years, width);
            for (var i = 0; i < options.Length; i++)
            {
                var x = Sheet.Margin + (i * (width + Gap));
                if (i > 0) canvas.Line(x - (Gap / 2), Sheet.Top - 6, x - (Gap / 2), barsTop + OptionBars.Height, "faint");
                var title = $"{Numerals.Whole(i + 1)}  {FabricShapes.Title(options[i].Shape)}";
                canvas.Text(x, Sheet.Top + 10, TextFit.Short(title, width, 13, bold: true), "sub bold");
                canvas.Text(x, Sheet.Top + 27, TextFit.Short(Under(options[i]), width, SmallSize), "small soft");
                TierSketch.Draw(canvas, options[i], x, SketchTop, width);
                canvas.Lines(x, WordsTop, words[i], LineStep, "small");
                bars.Draw(canvas, options[i], x, barsTop);
            }
            OptionBars.Legend(canvas, Sheet.Margin, legendTop);
            canvas.Lines(Sheet.Margin, legendTop + 26, lost, LineStep, "small soft");
        });
    }

    private static string Under(FabricOption option)
    {
        var switches = option.Switches.Sum(s => s.Count);
        return $"{Numerals.Grouped(switches)} {(switches == 1 ? "switch" : "switches")}, "
            + $"{Numerals.Whole(option.Tiers)} {(option.Tiers == 1 ? "tier" : "tiers")}";
    }

    private static ImmutableArray<string> Words(FabricOption option, double width)
    {
        var texts = option.Switches.Select(FabricWords.Switches)
            .Concat(option.Uplinks.Select(u => "up: " + FabricWords.Uplinks(u)))
            .Append($"{Numerals.Grouped(option.Modules)} modules, {Numerals.Grouped(option.Cables)} cables")
            .Append($"room for {Numerals.Grouped(option.GrowthLeft)} more hosts")
            .Concat(Faster(option.NextLaneRate));
        return [.. texts.SelectMany(t => TextFit.Lines(t, width, SmallSize)).Take(MostWords)];
    }

    private static IEnumerable<string> Faster(NextLaneRate next)
    {
        if (next.Modules > 0)
            yield return $"faster lanes: {Numerals.Grouped(next.ModulesServing)} of {Numerals.Grouped(next.Modules)} modules still serve";
        if (next.Fibres > 0)
            yield return $"faster lanes: {Numerals.Grouped(next.FibresServing)} of {Numerals.Grouped(next.Fibres)} fibres still serve";
    }

    private static ImmutableArray<string> Lost(FabricStudy study, string currency) =>
    [
        .. TextFit.Lines(Sentence(FabricWords.BoundHolds), Sheet.Width - (2 * Sheet.Margin), SmallSize),
        .. TextFit.Lines(Sentence(FabricWords.EnergyCounted), Sheet.Width - (2 * Sheet.Margin), SmallSize),
        .. study.Answer.Lost.Select(l => TextFit.Short(
            $"{FabricShapes.Title(l.Shape)}: {l.Reason}"
                + (l.Bound is { } b ? $" (no less than {Numerals.Grouped(b.Units)} {currency})" : ""),
            Sheet.Width - (2 * Sheet.Margin), SmallSize)),
        .. FabricWords.BreakEvensApart(study) is { Length: > 0 } apart
            ? TextFit.Lines(Sentence(apart), Sheet.Width - (2 * Sheet.Margin), SmallSize)
            : [],
    ];

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";

    private static string Subtitle(WantedFabric wanted) =>
        string.Join("; ", wanted.Hosts.Select(h =>
            $"{Numerals.Grouped(h.Count)} x {h.Name} with {Numerals.Whole(h.Ports)} x {h.Rate} each"))
        + $"; oversubscription {(wanted.Oversubscription.IsEmpty ? "1:1" : string.Join(", ", wanted.Oversubscription))}"
        + (wanted.Growth.Value > 0 ? $"; growth {wanted.Growth} a year" : "")
        + (wanted.Survive > 0 ? $"; survives {Numerals.Whole(wanted.Survive)} {(wanted.Survive == 1 ? "switch" : "switches")} out" : "")
        + $"; {Numerals.Whole(wanted.Years)} years";

    private static string Description(FabricStudy study, string currency) =>
        string.Join(" ", study.Answer.Options.Select((o, i) =>
            $"Option {Numerals.Whole(i + 1)}, {FabricShapes.Title(o.Shape)}: {string.Join("; ", o.Switches.Select(FabricWords.Switches))}; "
            + $"{Numerals.Grouped(o.Price.Units)} {currency} to buy, {Numerals.Grouped(o.PriceOverYears.Units)} over the years, "
            + $"{Numerals.Grouped((decimal)o.Watts.Value)} W, {Numerals.Grouped(o.RackUnits)} rack units."));
}
