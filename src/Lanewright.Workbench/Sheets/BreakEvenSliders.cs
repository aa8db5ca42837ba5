using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Fabrics;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What would change the answer: a slider for each quantity, over the stretches in which one option is the cheapest. The stretches
/// are solved beforehand; moving a slider only looks up where it stands.</summary>
internal sealed class BreakEvenSliders(SheetPaper paper, Plan plan, FabricStudy study)
{
    private const double Width = 640;
    private const double BandHeight = 20;

    private readonly List<string> options = [.. study.Answer.Options.Select(Winner.NameOf)];

    /// <summary>Writes them, and the same as charts.</summary>
    public void Write()
    {
        var all = study.BreakEvens.Where(b => b.Stretches.Any(s => s.Shape is not null)).ToList();
        if (all.Count == 0) return;
        paper.Markup.Element("h2", "What would change the answer");
        paper.Markup.Element("p", "One quantity at a time, everything else as asked. Where one option stops being the cheapest is solved "
            + "for and marked on the scale; the letters say which is it where.", ("class", "soft"));
        paper.Markup.Open("div", ("id", "sliders"));
        foreach (var breakEven in all) Slider(breakEven);
        paper.Markup.Close();
        paper.Markup.Open("details");
        paper.Markup.Element("summary", "The same as charts");
        foreach (var breakEven in all) paper.Figure(() => BreakEvenChart.Write(paper.Markup, plan, breakEven, isFile: false));
        paper.Markup.Close();
    }

    private void Slider(BreakEven breakEven)
    {
        var (markup, key) = (paper.Markup, BreakEvenWords.Key(breakEven.Quantity));
        var told = BreakEvenTurns.Told(breakEven);
        var (low, high) = (breakEven.Stretches[0].From, breakEven.Stretches[^1].To);
        markup.Open("section", ("class", "slider"), ("data-key", key), ("data-stretches", Json(breakEven.Quantity, told)),
            ("data-currency", plan.Currency), ("data-years", Numerals.Whole(study.Wanted.Years)),
            ("data-exact", breakEven.IsChain ? "yes" : "no"), ("data-unit", Unit(breakEven.Quantity)));
        markup.Element("label", BreakEvenWords.Title(breakEven.Quantity, plan.Currency), ("for", "slide-" + key));
        Band(told, breakEven.Now, low, high);
        markup.Leaf("input", ("type", "range"), ("id", "slide-" + key), ("min", Plain(low)), ("max", Plain(high)),
            ("step", Step(breakEven.Quantity)), ("value", Plain(breakEven.Now)), ("data-now", Plain(breakEven.Now)),
            ("aria-describedby", "said-" + key));
        markup.Inline("button", "as asked", ("type", "button"), ("class", "back"));
        markup.Element("output", "", ("id", "said-" + key), ("for", "slide-" + key), ("aria-live", "polite"));
        markup.Open("ol", ("class", "stretches"));
        foreach (var (stretch, i) in told.Select((s, i) => (s, i))) Stretch(breakEven.Quantity, stretch, i);
        markup.Close();
        markup.Close();
    }

    private void Stretch(BreakEvenQuantity quantity, BreakEvenStretch stretch, int index)
    {
        paper.Markup.Open("li");
        paper.Markup.Inline("b", Letter(index));
        paper.Markup.Text($" {BreakEvenWords.Value(quantity, stretch.From)} to {BreakEvenWords.Value(quantity, stretch.To)}: "
            + (stretch.Shape is null
                ? "nothing fits"
                : $"{BreakEvenWords.Cheapest(stretch)}, {BreakEvenWords.Cost(stretch)} {plan.Currency}"));
        paper.Markup.Close();
    }

    /// <summary>The scale of the slider with its break-evens, to scale.</summary>
    private void Band(ImmutableArray<BreakEvenStretch> told, decimal asked, decimal low, decimal high)
    {
        double X(decimal value) => (double)((value - low) / Math.Max(0.000001m, high - low)) * Width;
        paper.Markup.Open("svg", ("class", "lw band"), ("viewBox", $"0 0 {MarkupWriter.Number(Width)} 34"), ("preserveAspectRatio", "none"),
            ("aria-hidden", "true"));
        var canvas = new Canvas(paper.Markup);
        foreach (var (stretch, i) in told.Select((s, i) => (s, i)))
        {
            var (from, to) = (X(stretch.From), i + 1 < told.Length ? X(told[i + 1].From) : Width);
            canvas.Box(from, 4, Math.Max(0, to - from), BandHeight, i % 2 == 0 ? "block" : "box");
            if (to - from > 14) canvas.Text((from + to) / 2, 18, Letter(i), "bold mid");
        }
        var now = Math.Clamp(X(asked), 0, Width);
        canvas.Line(now, 0, now, 28, "heavy");
        canvas.Text(Math.Clamp(now, 14, Width - 14), 34, "asked", "tiny mid");
        paper.Markup.Close();
    }

    private string Json(BreakEvenQuantity quantity, ImmutableArray<BreakEvenStretch> told)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            foreach (var stretch in told)
            {
                json.WriteStartObject();
                json.WriteNumber("from", stretch.From);
                json.WriteNumber("to", stretch.To);
                json.WriteString("fromWords", BreakEvenWords.Value(quantity, stretch.From));
                json.WriteString("toWords", BreakEvenWords.Value(quantity, stretch.To));
                json.WriteString("name", stretch.Shape is null ? "" : BreakEvenWords.Cheapest(stretch));
                json.WriteNumber("option", stretch.Shape is null || stretch.Turns > 0 ? -1 : options.IndexOf(stretch.Name));
                json.WriteStartArray("points");
                (decimal Value, Money Cost)[] points = [(stretch.From, stretch.CostFrom), .. stretch.Between, (stretch.To, stretch.CostTo)];
                foreach (var (value, cost) in points)
                {
                    json.WriteStartArray();
                    json.WriteNumberValue(value);
                    json.WriteNumberValue(cost.Units);
                    json.WriteEndArray();
                }
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Hosts come whole, growth and ratios in the parts they were asked in; prices as finely as the slider can be moved.</summary>
    private static string Step(BreakEvenQuantity quantity) => quantity switch
    {
        BreakEvenQuantity.Hosts => "1",
        BreakEvenQuantity.Growth => "0.01",
        BreakEvenQuantity.Oversubscription => "0.001",
        _ => "any",
    };

    private static string Unit(BreakEvenQuantity quantity) => quantity switch
    {
        BreakEvenQuantity.ModulePrice => " times",
        BreakEvenQuantity.Growth => " %",
        BreakEvenQuantity.Oversubscription => ":1",
        BreakEvenQuantity.Hosts => " hosts",
        _ => "",
    };

    private static string Letter(int stretch) => ((char)('A' + stretch)).ToString();

    private static string Plain(decimal value) => Numerals.Plain((double)value);
}
