using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report about lines between sites.</summary>
/// <param name="markup">Where it is written.</param>
/// <param name="designed">The plan.</param>
/// <param name="wayTo">Where a number of a route leads, by what it is and the route's name; nowhere on paper.</param>
internal sealed class ReportLines(MarkupWriter markup, DesignedPlan designed, Func<string, string, string>? wayTo = null)
{
    /// <summary>Where the section begins.</summary>
    public const string Anchor = "lines";

    /// <summary>The delay of a route.</summary>
    public const string Delay = "delay";

    /// <summary>The share of time of a line.</summary>
    public const string Uptime = "uptime";

    /// <summary>Routes shown with drawings at most; the folder of drawings holds more.</summary>
    private const int MostShown = 6;

    private const int MostCuts = 40;
    private const int MostChannels = 96;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        if (designed.Plan.Lines.IsEmpty || designed.Plan.Spans.IsEmpty) return;
        markup.Element("h2", "Lines between sites", ("id", Anchor));
        markup.Element("p", LineCautions.Short, ("class", "soft"));
        Figure(() => new SiteMap(designed).Write(markup, LineDrawingSet.Map, isFile: false));
        Table();
        Cuts();
        foreach (var sheet in LineDrawingSet.Sheets(designed).Take(MostShown)) Route(sheet);
    }

    private void Table()
    {
        var table = HtmlTable.Open(markup, "line", "way", "#km", "scheme", "type", "verdict", "#smallest margin dB", "#us one way",
            "#of the time %", "#minutes a year", "#left after worst cut");
        foreach (var sheet in LineDrawingSet.Sheets(designed))
        {
            var (line, route, design) = (sheet.Line, sheet.Line.Routes[sheet.Route], sheet.Design);
            table.Row(line.Statement.Name, route.Name, Numerals.Plain(Math.Round(route.Length.Kilometres, 2)),
                LineWords.Name(design.Scheme), design.TypeName, Checks.Word(design.Verdict),
                design.Worst?.Margin is { } margin ? Numerals.Fixed(margin.Value, 2) : "",
                design.Latency is { } delay ? Linked(Numerals.Fixed(delay.Value.Nanoseconds / 1000, 1), Delay) : "",
                Linked(LineWords.Percent(line.Availability), Uptime), Numerals.Fixed(RouteAvailability.MinutesDown(line.Availability), 1),
                line.Cuts.Select(c => c.Left.ToString()).FirstOrDefault(""));

            LinkedText Linked(string text, string what) => new(text, wayTo?.Invoke(what, sheet.Name) ?? "");
        }
        table.Close();
        foreach (var line in designed.Lines.Value.Lines)
        {
            if (line.Difference is { } difference)
                Sentence($"the routes of {line.Statement.Name} differ by {Numerals.Shown(difference.Nanoseconds / 1000, "us")} one way");
            if (line.Routes.Length < line.Statement.Routes && !line.Conflicts.IsEmpty)
                Sentence($"{line.Statement.Name} has no second route: {LineConflict.Words(line.Conflicts)}");
        }
        markup.Element("p", "Delays are those of the fibre in one direction; what codes and signal processing of modules take comes on "
            + "top. How much of the time a line carries something follows from how often fibre is cut and how long a repair "
            + "takes, and from how much of the time sites work, all settable in the plan. What both routes need stands before both, "
            + "and the rest of each fails by itself. Equipment of the line is not in it.",
            ("class", "soft"));
    }

    private void Cuts()
    {
        var cuts = designed.Lines.Value.Lines.SelectMany(l => l.Cuts.Select(c => (l.Statement.Name, l.Capacity, Cut: c))).ToList();
        if (cuts.Count == 0) return;
        var table = HtmlTable.Open(markup, "line", "#whole", "when this is cut", "kind", "#left");
        foreach (var (name, whole, cut) in cuts.Take(MostCuts))
            table.Row(name, whole.ToString(), cut.What, cut.IsDuct ? "duct" : "span", cut.Left.ToString());
        table.Close();
        if (cuts.Count > MostCuts)
            markup.Element("p", $"{Numerals.Grouped(cuts.Count - MostCuts)} more are in lines.json.", ("class", "soft"));
    }

    private void Route(LineSheet sheet)
    {
        markup.Element("h3", sheet.Words);
        var answer = sheet.Line.Routes[sheet.Route].Answer;
        var table = HtmlTable.Open(markup, "scheme", "verdict", $"#parts, {designed.Plan.Currency}", "why");
        foreach (var tried in answer.Tried)
            table.Row(LineWords.Name(tried.Scheme), Checks.Word(tried.Verdict), LinePriceWords.Short(tried.Price), tried.Reason);
        table.Close();
        Sentence(LinePriceWords.Whole(answer.Price, designed.Plan.Currency));
        Sentence(LineHeadroomWords.Of(answer));
        Sentence(LineCautions.Hint(sheet.Design, designed.Plan.Standards));
        if (sheet.Design.TypeName.Length > 0) Figure(() => LineDrawingSet.SingleLine(designed, sheet).Write(markup, isFile: false));
        if (sheet.Design.Stages.Length > 1) Figure(() => new PowerDrawing(sheet).Write(markup, isFile: false));
        if (LineDrawingSet.HasSpectrum(sheet)) Figure(() => new SpectrumDrawing(sheet).Write(markup, isFile: false));
        Channels(sheet.Design);
        var changes = LineChange.Of(answer, designed.Plan.Catalogue);
        if (changes.IsEmpty) return;
        var gains = HtmlTable.Open(markup, "change", "#margin gained dB", $"#{designed.Plan.Currency} more");
        foreach (var change in changes)
            gains.Row(change.What, Numerals.Fixed(change.Gained.Value, 2), change.Cost is { } cost ? Numerals.Grouped(cost.Units) : "");
        gains.Close();
        if (LineChange.BestBuy(changes) is { } best) markup.Element("p", $"Most margin for its cost: {best.What}.");
        markup.Element("p", $"Verdicts rest on values marked {Marks.Name(sheet.Design.Mark)} or better.", ("class", "soft"));
    }

    private void Sentence(string words)
    {
        if (words.Length > 0) markup.Element("p", char.ToUpperInvariant(words[0]) + words[1..] + ".");
    }

    /// <summary>Every channel at its receiver.</summary>
    private void Channels(LineDesign design)
    {
        if (!design.Channels.Any(c => c.Gsnr is not null)) return;
        var table = HtmlTable.Open(
            markup, "#THz", "#nm", "#received dBm", "#over amplifier noise dB", "#over glass noise dB", "#all noise dB", "#needed dB",
            "#penalties dB", "#margin dB", "#expected margin dB", "#code margin dB", "#above Shannon dB", "#ps/nm");
        foreach (var channel in design.Channels.Take(MostChannels))
        {
            table.Row(Numerals.Fixed(channel.Frequency.Terahertz, 5), Numerals.Fixed(channel.Frequency.Wavelength.Nanometres, 3),
                Of(channel.Received?.Dbm), Of(channel.Osnr?.Value), Of(channel.OverNonlinear?.Value), Of(channel.GsnrInReference?.Value),
                Of(channel.Required?.Value), Of(channel.Penalty.Value), Of(channel.Margin?.Value), Of(channel.ExpectedMargin?.Value),
                Of(channel.CodeMargin?.Value), Of(channel.OverShannon?.Value),
                channel.Dispersion is { } d ? Numerals.Whole((long)Math.Round(d.PicosecondsPerNanometre)) : "");
        }
        table.Close();
        Sentence(LineSpanWords.OfExpected(design));

        static string Of(double? value) => value is { } known ? Numerals.Fixed(known, 2) : "";
    }

    private void Figure(Action draw)
    {
        markup.Open("figure", ("class", "ribbon"));
        draw();
        markup.Close();
    }
}
