using Lanewright.Deliverables.Drawings.Elevation;
using Lanewright.Deliverables.Drawings.Floor;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Power;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report about racks, power and heat.</summary>
internal sealed class ReportRacks(MarkupWriter markup, DesignedPlan designed)
{
    /// <summary>Where the section begins.</summary>
    public const string Anchor = "racks";

    /// <summary>Elevations shown at most; the folder of drawings holds more.</summary>
    private const int MostShown = 6;

    private const double WattsInKilowatt = 1000;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        var book = designed.Racks.Value;
        if (book.Racks.IsEmpty) return;
        markup.Element("h2", "Racks, power and heat", ("id", Anchor));
        markup.Element("p", "Powers are those of the catalogue with modules at their most; what is drawn becomes heat. Air is "
            + $"reckoned with a rise of {new AirStream(designed.Plan.Standards).UsualRise} between inlet and outlet and "
            + "the density of air at the height of the hall. Sizing of circuits, earthing "
            + "and floors is "
            + "for licensed persons under local codes.", ("class", "soft"));
        Halls();
        if (!designed.Plan.Power.IsEmpty)
        {
            Totals();
            Feeds();
        }
        var floor = 0;
        foreach (var hall in FloorSet.Halls(designed.Plan.Building).Take(MostShown))
        {
            markup.Open("figure", ("class", "ribbon"));
            FloorSet.Drawing(designed, hall).Write(markup, Identifiers.Floor(++floor) + "-floor", isFile: false);
            markup.Close();
        }
        var strips = new Lazy<ILookup<int, StripLoad>>(() => designed.Strips.ToLookup(s => s.Rack.Index));
        var number = 0;
        foreach (var sheet in ElevationSet.Sheets(book).Take(MostShown))
        {
            markup.Open("figure", ("class", "ribbon"));
            var drawing = new ElevationDrawing(designed, sheet, strips, isRear: false);
            drawing.Write(markup, Identifiers.Elevation(++number) + "-front", isFile: false);
            markup.Close();
        }
    }

    private void Halls()
    {
        var air = new AirStream(designed.Plan.Standards);
        var pue = designed.Plan.Policy.Pue;
        var table = HtmlTable.Open(markup, "hall", "#usual W", "#most W", "#BTU/h", "#air m3/h", "#air CFM", "#kWh a year at usual load",
            pue is { } stated
                ? $"#kWh a year of the site, {Numerals.Fixed(SiteOverhead.Of(stated).Percent, 1)} % of it beside the equipment"
                : "#kWh a year of the site (no PUE stated)", "#kg of used racks and devices");
        foreach (var heat in HallHeat.Of(designed.Racks.Value))
        {
            var density = air.Density(heat.Hall.Altitude ?? default);
            var stream = air.CubicMetresAnHour(heat.Maximum, air.UsualRise, density);
            var year = heat.Typical.Value * Duration.Year.Hours / WattsInKilowatt;
            table.Row(heat.Hall.FullName, Whole(heat.Typical.Value), Whole(heat.Maximum.Value), Whole(AirStream.BtuAnHour(heat.Maximum)),
                Whole(stream), Whole(AirStream.CubicFeetAMinute(stream)), Whole(year),
                pue is { } times ? Whole(year * times) : "", Whole(heat.Weight.Kilograms));
        }
        table.Close();
    }

    /// <summary>What the boards and what stands before them have to bear.</summary>
    private void Totals()
    {
        var table = HtmlTable.Open(markup, "feed over all racks", "#strips", "#most W", "phases, A", "with this one lost",
            "#most W", "phases, A");
        foreach (var load in FeedLoad.Of(designed.Racks.Value, designed.Strips))
            table.Row(
                load.Feed.Name, Numerals.Whole(load.Strips), Whole(load.Whole.Watts.Value), Amperes(load.Whole), load.Lost?.Name ?? "none",
                Whole(load.AfterLoss.Watts.Value), Amperes(load.AfterLoss));
        table.Close();
    }

    private static string Amperes(FeedDraw draw) => string.Join(" / ", draw.Phases.Select(p => Numerals.Fixed(p.Value, 1)));

    /// <summary>The fullest strip of each feed.</summary>
    private void Feeds()
    {
        var table = HtmlTable.Open(markup, "feed", "#volts", "#phases", "#breaker A", "#strips", "#fullest phase A", "#after a loss "
            + "A", "#may carry A",
            "verdict");
        foreach (var feed in designed.Strips.GroupBy(s => s.Feed))
        {
            var highest = feed.Max(s => s.Highest);
            var after = feed.Max(s => s.AfterLoss);
            var limit = feed.First().Limit;
            table.Row(
                feed.Key.Name, Numerals.Plain(feed.Key.Volts), Numerals.Whole(feed.Key.Phases), Numerals.Plain(feed.Key.Breaker.Value),
                Numerals.Whole(feed.Count()), Numerals.Fixed(highest.Value, 1), Numerals.Fixed(after.Value, 1),
                Numerals.Fixed(limit.Value, 1),
                highest > limit || after > limit ? ReportWords.Fails : "passes");
        }
        table.Close();
    }

    private static string Whole(double value) => Numerals.Grouped((decimal)Math.Round(value));
}
