using System.Text.RegularExpressions;
using System.Xml.Linq;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings;
using Lanewright.Engineering.Cost;
using Lanewright.Rules;

namespace Lanewright.Tests.Workbench;

/// <summary>What a number opens comes to the number.</summary>
public sealed class DerivationTests(OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    [Fact]
    public void Parts_AreTheSumOfWhatNeedsThem()
    {
        var designed = Demo();
        foreach (var name in designed.Parts.Select(p => p.Item.Name).Distinct())
        {
            var origins = PartsTally.OriginsOf(designed.Plan, designed.Design, designed.Lines, designed.Plant, name);
            // Cords of one length may be of several types, a line each.
            foreach (var lines in designed.Parts.Where(p => p.Item.Name == name).GroupBy(p => p.Length))
            {
                var own = origins.Where(o => o.Length == lines.Key).ToList();
                Assert.Equal((lines.Sum(l => l.Needed), lines.Sum(l => l.Existing)), (own.Sum(o => o.Needed), own.Sum(o => o.Existing)));
            }
        }
    }

    /// <summary>Headline numbers of the brief are those that their derivations begin with.</summary>
    [Theory]
    [InlineData("why/devices", "devices")]
    [InlineData("why/cables", "cables to lay")]
    [InlineData("why/price", "CU to buy")]
    public async Task Headline_OpensWhatItIsTheSumOf(string address, string name)
    {
        var (_, brief) = await demo.Get("brief");
        var figure = All(PageOf(brief), "a").First(a => a.Attribute("href")!.Value.EndsWith(address, StringComparison.Ordinal)
            && a.Value.EndsWith(name, StringComparison.Ordinal));
        var (_, why) = await demo.Get(address);
        var sum = All(PageOf(why), "tr").Single(r => r.Attribute("class")?.Value == "sum");
        var told = NumberIn(figure.Value);
        Assert.NotNull(told);
        Assert.Contains(All(sum, "td"), d => NumberIn(d.Value) == told);
    }

    /// <summary>What is lost with a tray down is told in sums that the figures over the drawing lead to.</summary>
    [Fact]
    public async Task Losses_OpenWhatTheyAreTheSumOf()
    {
        const string down = "?down=tray%20survey%2Fover-S";
        var demand = Identifiers.Demand(Demo().Load.Demands.Single(d => d.Demand.Name == "results").Demand.Index);
        var (_, fabric) = await demo.Get($"fabric/{demand}{down}");
        foreach (var name in new[] { "hosts cut off", "traffic lost" })
        {
            var figure = All(PageOf(fabric), "div").First(d => d.Elements().FirstOrDefault(e => e.Name.LocalName == "dt")?.Value == name);
            var address = All(figure, "a").First().Attribute("href")!.Value;
            Assert.EndsWith($"why/down/{demand}{down}", address, StringComparison.Ordinal);
            var told = NumberIn(All(figure, "a").First().Value);
            Assert.True(told > 0);
            var (_, why) = await demo.Get($"why/down/{demand}{down}");
            Assert.Contains(All(PageOf(why), "tr").Where(r => r.Attribute("class")?.Value == "sum").SelectMany(r => All(r, "td")),
                d => NumberIn(d.Value) == told);
        }
    }

    /// <summary>The delay of a route is that of its spans: length times group index over the speed of light, 299 792.458 km/s
    /// (SI).</summary>
    [Theory]
    [InlineData("W01a")]
    [InlineData("W01b")]
    public async Task Delay_OpensItsSpans(string route)
    {
        var told = Number((await Linked($"why/delay/{route}")).Value);
        var (_, why) = await demo.Get($"why/delay/{route}");
        var spans = Rows(why, "").Select(r => Number(r[2]) * Number(r[3]) / 0.299792458).ToList();
        Assert.NotEmpty(spans);
        Assert.Equal(spans.Sum(), told, 0.06);
        Assert.Equal(told, Number(Rows(why, "sum").Single()[4]), 0.06);
    }

    /// <summary>Things in a row work together, and of two routes only both at once take a line: textbook algebra of series and
    /// parallel.</summary>
    [Fact]
    public async Task TimeOfALine_OpensWhatItIsMadeOf()
    {
        var told = (await Linked("why/uptime/W01a")).Value;
        var (_, why) = await demo.Get("why/uptime/W01a");
        Assert.Equal(told, Rows(why, "sum").Single()[2]);
        Assert.Contains("works again after 12 h", why, StringComparison.Ordinal);
        var rows = Rows(why, "").ToLookup(r => r[0].StartsWith("fibre of ", StringComparison.Ordinal)
            || r[0].StartsWith("sites on ", StringComparison.Ordinal) ? r[0]["fibre of ".Length..] : "", r => Number(r[2]) / 100);
        var routes = rows.Where(r => r.Key.Length > 0).Select(r => r.Aggregate(1.0, (all, up) => all * up)).ToList();
        Assert.Equal(2, routes.Count);
        Assert.Equal(100 * rows[""].Aggregate(1.0, (all, up) => all * up) * (1 - routes.Aggregate(1.0, (down, up) => down * (1 - up))),
            Number(told), 2e-6);
    }

    /// <summary>Watts, units, room and gap of an option lead to sums that come to them, row by row.</summary>
    [Fact]
    public async Task FiguresOfAnOption_OpenWhatTheyAreTheSumOf()
    {
        var (_, page) = await demo.Get("options");
        var side = Rows(page, "").ToList();
        for (var i = 1; i <= 3; i++)
        {
            var watts = Table($"watts-{i}");
            Assert.Equal(Told("W, usual"), Number(watts[^1][3]));
            Assert.Equal(Number(watts[^1][3]), watts.SkipLast(1).Sum(r => Number(r[1]) * Number(r[2])), 0.5);
            var units = Table($"units-{i}");
            Assert.Equal(Told("rack units"), Number(units[^1][3]));
            Assert.Equal(Number(units[^1][3]), units.SkipLast(1).Sum(r => Number(r[1]) * Number(r[2])));
            Assert.Equal(Number(units[^1][4]), units.SkipLast(1).Sum(r => Number(r[4])));
            var room = Table($"room-{i}");
            var (ports, each) = (Number(room[0][1]), Number(room[1][1]));
            var hosts = room.Where(r => r[0] == "hosts of each").Select(r => Number(r[1])).FirstOrDefault(1);
            Assert.Equal(Told("room for hosts beyond the start"), (Math.Floor(ports / each) * hosts) - Number(room[^2][1]));
            Assert.Equal(Told("room for hosts beyond the start"), Number(room[^1][1]));
            var gap = Table($"gap-{i}");
            Assert.Equal(Number(gap[2][1]), Number(gap[0][1]) - Number(gap[1][1]), 0.005);

            double Told(string name) => Number(side.First(r => r[0] == name)[i]);
        }

        List<string[]> Table(string id) =>
            [.. All(All(PageOf(page), "div").Single(d => d.Attribute("id")?.Value == id), "tbody").SelectMany(Cells)];
    }

    /// <summary>How full a stretch is opens that stretch.</summary>
    [Fact]
    public async Task FillOfATray_OpensWhatFillsIt()
    {
        var (_, floor) = await demo.Get("floor");
        var fills = All(PageOf(floor), "td").SelectMany(d => All(d, "a")).Where(a => Regex.IsMatch(a.Value, @"^\d")
            && a.Attribute("href")!.Value.Contains("/why/tray/", StringComparison.Ordinal)).Take(5).ToList();
        Assert.NotEmpty(fills);
        foreach (var way in fills)
        {
            var (_, why) = await demo.Get(way.Attribute("href")!.Value.Split('/', 3)[2]);
            Assert.Equal(Number(way.Value), Number(All(PageOf(why), "h1").Single().Value), 0.005);
        }
    }

    /// <summary>What a single failure costs opens the sums of it.</summary>
    [Fact]
    public async Task CostOfAFailure_OpensWhatItIsTheSumOf()
    {
        var (_, fabric) = await demo.Get("fabric");
        var failures = All(PageOf(fabric), "div").Single(d => d.Attribute("id")?.Value == "failures");
        var cut = All(failures, "a").First(a => a.Attribute("href")!.Value.Contains("/why/down/", StringComparison.Ordinal));
        Assert.True(Number(cut.Value) > 0);
        var (_, why) = await demo.Get(cut.Attribute("href")!.Value.Split('/', 3)[2]);
        Assert.Contains(Rows(why, "sum").SelectMany(r => r), c => c.Length > 0 && NumberIn(c) == (decimal)Number(cut.Value));
    }

    /// <summary>How full a link gets when one thing fails opens the network with that thing down, links among them.</summary>
    [Theory]
    [InlineData("link")]
    [InlineData("switch")]
    [InlineData("module")]
    public async Task FullestLinkAfterAFailure_IsThatOfTheNetworkWithoutIt(string kind)
    {
        var (_, fabric) = await demo.Get("fabric");
        var failures = All(PageOf(fabric), "div").Single(d => d.Attribute("id")?.Value == "failures");
        var rows = All(failures, "tr").Select(r => All(r, "td").ToList()).Where(d => d.Count > 0 && d[0].Value == kind).Take(4).ToList();
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            var told = All(row[5], "a").Single();
            var (_, down) = await demo.Get(told.Attribute("href")!.Value.Split('/', 3)[2].Split('#')[0]);
            var figure = All(PageOf(down), "div")
                .First(d => d.Elements().FirstOrDefault()?.Value == "fullest link between switches");
            Assert.Equal(told.Value, All(figure, "b").Single().Value);
        }
    }

    /// <summary>Decibels of trunks are sums: of the elements of a channel, and of the parts of a test.</summary>
    [Fact]
    public async Task DecibelsOfATrunk_OpenTheirParts()
    {
        var budget = Demo().Books.TrunkBudgets.Value[0]!;
        var (_, plant) = await demo.Get("plant");
        Assert.Contains("why/trunk/headland", plant, StringComparison.Ordinal);
        var (_, why) = await demo.Get("why/trunk/headland");
        var tables = All(PageOf(why), "tbody").ToList();
        var channel = Cells(tables[0]).ToList();
        Assert.Equal(budget.Channel, channel.SkipLast(1).Sum(r => Number(r[3])), 0.006);
        Assert.Equal(budget.Trunk, channel.SkipLast(1).Where(r => r[4] == "yes").Sum(r => Number(r[3])), 0.006);
        Assert.Equal(budget.TrunkMost, Number(Cells(tables[1]).Last()[1]), 0.001);
        Assert.All(tables.Skip(2).Select(t => Cells(t).ToList()),
            t => Assert.Equal(Number(t[^1][3]), t.SkipLast(1).Sum(r => Number(r[3])), 0.003));
        Assert.True(tables.Count > 2, "the demo's fibre has a test");
    }

    /// <summary>The price of an option over the years is what its years and its kinds of parts come to.</summary>
    [Fact]
    public async Task PriceOverYears_OpensItsYears()
    {
        var study = Demo().Sizing.Value!;
        var (_, page) = await demo.Get("options");
        foreach (var (option, i) in study.Answer.Options.Select((o, i) => (o, i)))
        {
            Assert.Contains($"#years-{i + 1}\"", page, StringComparison.Ordinal);
            var tables = All(All(PageOf(page), "div").Single(d => d.Attribute("id")?.Value == $"years-{i + 1}"), "tbody")
                .Select(t => Cells(t).ToList()).ToList();
            foreach (var column in new[] { 3, 4, 5 })
                Assert.Equal(Number(tables[0][^1][column]), tables[0].SkipLast(1).Sum(r => Number(r[column])), 1.0);
            Assert.Equal((double)option.PriceOverYears.Units, Number(tables[0][^1][3]) + Number(tables[0][^1][5]), 0.011);
            Assert.Equal((double)option.PriceOverYears.Units, tables[1].SkipLast(1).Sum(r => Number(r[1])), 0.011);
        }
        // Where a stretch costs the same at both ends, that is said once.
        Assert.DoesNotMatch(@"([0-9\u202f]+) to \1 CU", System.Net.WebUtility.HtmlDecode(page));
    }

    private static IEnumerable<string[]> Cells(XElement body) => All(body, "tr").Select(r => All(r, "td").Select(d => d.Value).ToArray());

    private async Task<XElement> Linked(string address)
    {
        var (_, lines) = await demo.Get("lines");
        return All(PageOf(lines), "a").First(a => a.Attribute("href")!.Value.EndsWith(address, StringComparison.Ordinal));
    }

    /// <summary>Cells of the rows of a page that look so.</summary>
    private static IEnumerable<string[]> Rows(string page, string style) => All(PageOf(page), "tbody").SelectMany(b => All(b, "tr"))
        .Where(r => (r.Attribute("class")?.Value ?? "") == style).Select(r => All(r, "td").Select(d => d.Value).ToArray());

    private static double Number(string text) => double.Parse(
        text.Split(' ')[0].Replace("\u202f", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);

    private static DesignedPlan Demo() =>
        Expect.Designed(Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml"));

    /// <summary>The number a text begins with, without its parts of a whole; null where it begins with none.</summary>
    private static decimal? NumberIn(string text) => Regex.Match(text, @"^[0-9\u202f]+(\.[0-9]+)?") is { Success: true } found
        ? Math.Round(decimal.Parse(found.Value.Replace("\u202f", "", StringComparison.Ordinal),
            System.Globalization.CultureInfo.InvariantCulture), MidpointRounding.AwayFromZero)
        : null;

    [Theory]
    [InlineData("fabric/D05")]
    [InlineData("fabric/D05?down=spine-1")]
    [InlineData("fabric/D02")]
    public async Task FiguresOnLoads_StandApart(string sheet)
    {
        var (_, text) = await demo.Get(sheet);
        var boxes = All(PageOf(text), "text")
            .Where(t => t.Attribute("class")?.Value is "small bold halo mid" or "tiny soft halo mid")
            .Select(t => (t.Value, Size: t.Attribute("class")!.Value[0] == 's' ? 10.5 : 9.5, Text: t))
            .Select(t => (t.Value, Wide: TextFit.Width(t.Value, t.Size) / 2, High: t.Size, X: Of(t.Text, "x"),
                Y: Of(t.Text, "y"))).ToList();
        Assert.NotEmpty(boxes);
        foreach (var (a, i) in boxes.Select((b, i) => (b, i)))
            foreach (var b in boxes.Skip(i + 1))
                Assert.True(Math.Abs(a.X - b.X) >= a.Wide + b.Wide - 1 || Math.Abs(a.Y - b.Y) >= Math.Min(a.High, b.High) - 1,
                    $"'{a.Value}' and '{b.Value}' lie over one another");
    }

    private static double Of(XElement text, string name) =>
        double.Parse(text.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);

    private static XElement PageOf(string text) => XDocument.Parse(Regex.Replace(text, "<!DOCTYPE html>", "")).Root!;

    private static IEnumerable<XElement> All(XElement page, string name) => page.Descendants().Where(e => e.Name.LocalName == name);
}
