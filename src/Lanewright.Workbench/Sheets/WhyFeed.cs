using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a feed carries, rack by rack and device by device.</summary>
internal static class WhyFeed
{
    private const int MostRacks = 60;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string name)
    {
        var book = designed.Racks.Value;
        var strips = designed.Strips.Where(s => s.Feed.Name == name).ToList();
        if (strips.Count == 0) return paper.Unknown("Feed", $"There is no feed '{name}', or nothing stands in its racks.");
        var (feed, factor) = (strips[0].Feed, designed.Plan.Policy.PowerFactor);
        paper.Heading($"What feed {name} carries", $"{Numerals.Plain(feed.Volts)} V, {Numerals.Whole(feed.Phases)} "
            + $"{(feed.Phases == 1 ? "phase" : "phases")}, breaker {Numerals.Plain(feed.Breaker.Value)} A, of which "
            + $"{Numerals.Fixed(strips[0].Limit.Value, 1)} A may flow for hours; power factor "
            + $"{Numerals.Plain(factor.Value)} ({factor.Source}). A device "
            + "draws evenly from the feeds it is on. Mains work is for licensed persons, and local codes prevail.");
        foreach (var strip in strips.Take(MostRacks)) Strip(paper, designed, book, strip);
        if (strips.Count > MostRacks)
            paper.Markup.Element("p", $"{Numerals.Grouped(strips.Count - MostRacks)} more racks are in feeds.csv among the documents.",
                ("class", "soft"));
        return true;
    }

    private static void Strip(SheetPaper paper, DesignedPlan designed, RackBook book, StripLoad strip)
    {
        paper.Markup.Open("h2");
        paper.Way(strip.Rack.Name, paper.Site.To("racks", Site.Rack(strip.Rack)));
        paper.Markup.Close();
        var contents = book.Racks.First(r => r.Rack == strip.Rack);
        var table = PaperTable.Open(paper.Markup, "devices on this strip, alike ones together", "device", "#alike", "#W each at most",
            "#feeds it is on", "#W from this feed");
        var sum = 0.0;
        foreach (var alike in contents.Devices.Select(d => (Device: d, Feeds: StripLoads.FeedsOf(book, strip.Rack, d)))
            .Where(d => d.Feeds.Contains(strip.Feed))
            .GroupBy(d => (designed.Plan.Devices.Group(d.Device).Name, Watts: book.MaximumOf(d.Device), d.Feeds.Length)))
        {
            var watts = alike.Key.Watts.Value * alike.Count() / alike.Key.Length;
            sum += watts;
            var first = designed.Plan.Devices.Name(alike.First().Device);
            table.Row(new Entry(alike.Count() == 1 ? first : $"{first} and {Numerals.Whole(alike.Count() - 1)} more",
                paper.Site.To("devices", first)), Numerals.Whole(alike.Count()), Numerals.Grouped((decimal)alike.Key.Watts.Value, 1),
                Numerals.Whole(alike.Key.Length), Numerals.Grouped((decimal)watts, 1));
        }
        table.Row("sum", ["together", "", "", "", Numerals.Grouped((decimal)sum, 1)]);
        table.Close();
        var phases = string.Join(", ", strip.Phases.Select(p => Numerals.Fixed(p.Value, 2) + " A"));
        paper.Markup.Element("p", $"{(strip.Phases.Length > 1 ? "Its phases carry" : "It carries")} {phases} of "
            + $"{Numerals.Fixed(strip.Limit.Value, 2)} A" + (strip.Lost is { } lost
                ? $"; with feed {lost.Name} lost, {Numerals.Fixed(strip.AfterLoss.Value, 2)} A." : "."),
            ("class", strip.Highest > strip.Limit || strip.AfterLoss > strip.Limit ? "alert" : "calm"));
    }
}
