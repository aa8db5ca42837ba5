using Lanewright.Deliverables;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Cli.Printing;

/// <summary>Prints a line as tables.</summary>
internal static class LinePrinter
{
    private const int MostChanges = 4;

    /// <summary>Prints an answer.</summary>
    public static void Print(LineAnswer answer, Catalogue catalogue, string currency, LineSweep? sweep)
    {
        var design = answer.Design;
        Screen.Print(["scheme", "verdict", $"parts, {currency}", "why"], answer.Tried.Select(t => (IReadOnlyList<string>)
            [LineWords.Name(t.Scheme), Checks.Word(t.Verdict), LinePriceWords.Short(t.Price), t.Reason]));
        if (!design.Stages.IsEmpty) Stages(design);
        if (design.Channels.Any(c => c.Gsnr is not null)) Channels(design);
        foreach (var spans in LineSpanWords.Of(design.Spans)) Screen.Line(spans);
        if (LineSpanWords.OfExpected(design) is { Length: > 0 } without) Screen.Line(without);
        ChecksPrinter.Print(design.Checks);
        if (answer.Price is { } price) Parts(price, currency);
        Screen.Line(Summary(answer));
        if (LineHeadroomWords.Of(answer) is { Length: > 0 } room) Screen.Line(room);
        var changes = LineChange.Of(answer, catalogue);
        foreach (var change in changes.Take(MostChanges)) Screen.Line("  " + Change(change));
        if (LineChange.BestBuy(changes) is { } best) Screen.Line($"most margin for its cost: {Change(best)}");
        if (sweep is { Points.IsEmpty: true }) Screen.Line($"no sweep over {sweep.Quantity}: {sweep.WhyNone}");
        else if (sweep is not null)
        {
            Screen.Line($"with {LineWords.Name(design.Scheme)} as designed, over {sweep.Quantity}:");
            Sweep(sweep);
        }
        if (LineCautions.Hint(design, answer.Question.Standards) is { Length: > 0 } hint) Screen.Line(hint);
        Screen.Line(LineCautions.Short);
    }

    /// <summary>Prints a line of a plan with its routes and what cuts leave of it.</summary>
    public static void Print(LineResult line, Plan plan, string? swept)
    {
        Screen.Line("");
        var unproven = line.Routes.Any(r => r.Verdict == Verdict.Unproven) ? " unless what is unproven fails" : "";
        Screen.Line($"{line.Statement.Name}: {line.Statement.From.Name} to {line.Statement.To.Name}, {line.Capacity}{unproven}, "
            + $"{LineWords.Percent(line.Availability)} of the time by its fibre and sites, equipment not counted");
        if (line.Routes.IsEmpty)
        {
            Screen.Line($"no way of spans leads from {line.Statement.From.Name} to {line.Statement.To.Name}");
            return;
        }
        for (var route = 0; route < line.Routes.Length; route++)
        {
            Screen.Line($"route {Numerals.Whole(route + 1)}: {string.Join(" - ", line.Routes[route].Sites.Select(s => s.Name))} over "
                + $"{line.Routes[route].Name}, {Numerals.Shown(line.Routes[route].Length.Kilometres, "km")}");
            if (LineSpanWords.OfPlaces(line.Routes[route]) is { Length: > 0 } places) Screen.Line(places);
            Print(line.Routes[route].Answer, plan.Catalogue, plan.Currency,
                swept is null ? null : LineSweep.Over(line.Routes[route].Answer, swept));
        }
        if (line.Difference is { } difference)
            Screen.Line($"the routes differ by {Numerals.Shown(difference.Nanoseconds / 1000, "us")}");
        foreach (var separating in line.Separating) Screen.Line($"no second route: every way needs {separating}");
        if (line.Routes.Length < line.Statement.Routes && line.Separating.IsEmpty)
            Screen.Line(line.IsProven ? "no second route: " + LineConflict.Words(line.Conflicts)
                : "no second route was found within the work allowed");
        if (!line.Shared.IsEmpty) Screen.Line($"both routes are in {string.Join(" and ", line.Shared)}: one cut takes both");
        if (line.Routes.Any(r => !r.Carries)) Screen.Line("routes that fail count for nothing in what is carried, left and available");
        Screen.Print(["when this is cut", "", "left"], line.Cuts.Select(c => (IReadOnlyList<string>)
            [c.What, c.IsDuct ? "duct" : "span", c.Left.ToString()]));
    }

    private static string Summary(LineAnswer answer)
    {
        var design = answer.Design;
        var delay = design.Latency is { } latency
            ? $", {Numerals.Shown(latency.Value.Nanoseconds / 1000, "us")} one way in the fibre, what modules take on top"
            : "";
        var apart = design.Channels.Length > 1 && design.Scheme is not (LineScheme.Grey or LineScheme.CoarseDirect)
            ? $", {Numerals.Whole(design.Channels.Length)} channels "
                + $"{Numerals.Shown(answer.Question.Channels.Spacing.Gigahertz, "GHz")} apart ({answer.Question.SpacingWhy})"
            : "";
        var tilt = design.LaunchTilt.Value > 0 ? $" tilted by {Numerals.Unit(Math.Round(design.LaunchTilt.Value, 1), "dB")}" : "";
        var launch = design.Launch is { } level ? $", launch {Numerals.Shown(level.Dbm, "dBm")} a channel{tilt}" : "";
        var margin = design.Worst?.Margin is { } least ? $", smallest margin of signal over noise {Numerals.Shown(least.Value, "dB")}" : "";
        if (design.Tightest is { Margin: { } tight } check && check.Name != LineCheckNames.Osnr)
            margin += $", tightest {check.Name} with {Numerals.Shown(tight, "dB")}";
        var type = design.TypeName.Length > 0 ? " with " + design.TypeName : "";
        return $"{LineWords.Name(design.Scheme)}{type}: {Checks.Word(design.Verdict)}{Because(design)} "
            + $"[{Marks.Name(design.Mark)}]{apart}{margin}{launch}{delay}";
    }

    /// <summary>The comparisons that decide against it, by name.</summary>
    private static string Because(LineDesign design) => design.Verdict == Verdict.Pass ? "" : " by " + string.Join(", ",
        design.Checks.Where(c => c.Verdict == design.Verdict && !c.IsAdvice).Select(c => c.Name).Distinct());

    private static string Change(LineChange change) => $"{change.What}: {Numerals.Shown(change.Gained.Value, "dB")} more margin"
        + (change.Cost is not { } cost ? ""
            : cost.Units == 0 ? " at no cost"
            : $" for {Numerals.Grouped(cost.Units)} at the prices of the catalogue");

    private static void Parts(LinePrice price, string currency)
    {
        Screen.Print(["part", "count", "each", currency, "price is"], price.Parts.Select(p => (IReadOnlyList<string>)
        [
            p.Item.Name, Numerals.Grouped(p.Count), p.Each is { } each ? Numerals.Grouped(each.Units) : "",
            p.Together is { } together ? Numerals.Grouped(together.Units) : "", LinePriceWords.MarkOf(p),
        ]));
        Screen.Line(LinePriceWords.Whole(price, currency));
    }

    private static void Stages(LineDesign design) => Screen.Print(["behind", "km", "power", "over noise"],
        design.Stages.Select(s => (IReadOnlyList<string>)
        [
            s.What, Numerals.Plain(Math.Round(s.At.Kilometres, 3)), $"{Numerals.Fixed(s.Level.Dbm, 2)} dBm",
            s.OverNoise is { } over ? $"{Numerals.Fixed(over.Value, 2)} dB" : "",
        ]));

    private static void Channels(LineDesign design) => Screen.Print(
        [
            "THz", "nm", "received", "over amplifier noise", "over glass noise", "all noise", "needed", "margin", "expected",
            "errors before code", "code margin", "ps/nm",
        ],
        design.Channels.Select(c => (IReadOnlyList<string>)
        [
            Numerals.Fixed(c.Frequency.Terahertz, 5), Numerals.Fixed(c.Frequency.Wavelength.Nanometres, 3), Of(c.Received?.Dbm, "dBm"),
            Of(c.Osnr?.Value, "dB"), Of(c.OverNonlinear?.Value, "dB"), Of(c.GsnrInReference?.Value, "dB"), Of(c.Required?.Value, "dB"),
            Of(c.Margin?.Value, "dB"), Of(c.ExpectedMargin?.Value, "dB"),
            c.ErrorsBeforeCode is { } errors ? Numerals.Scientific(errors) : "", Of(c.CodeMargin?.Value, "dB"),
            c.Dispersion is { } d ? Numerals.Whole((long)Math.Round(d.PicosecondsPerNanometre)) : "",
        ]));

    private static void Sweep(LineSweep sweep) => Screen.Print(
        [$"{sweep.Quantity} {sweep.Unit}".TrimEnd(), $"smallest margin of {sweep.Of}", "verdict", "fails"],
        sweep.Points.Select(p => (IReadOnlyList<string>)
            [Numerals.Plain(p.Value), Of(p.MarginDb, "dB"), Checks.Word(p.Verdict), p.Failing]));

    private static string Of(double? value, string unit) => value is { } v ? $"{Numerals.Fixed(v, 2)} {unit}" : "";
}
