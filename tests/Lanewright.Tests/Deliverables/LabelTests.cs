namespace Lanewright.Tests.Deliverables;

/// <summary>Labels: who gets one, what stands on it, and where it lies on the sheet.</summary>
public sealed class LabelTests
{
    private const string Plan = """
        lanewright: 1
        name: marked
        sites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }
        labels: { page: A4, width: 45 mm, height: 20 mm, columns: 4, rows: 13, left: 12 mm, top: 15 mm, gap-across: 2 mm }
        devices:
          leaf: { model: fixed-32x400, racks: hall/A/1, unit: 44 }
          spine: { model: fixed-32x400, racks: hall/A/2, unit: 40 }
          host: { model: server-2u, cards: nic-2x200, racks: hall/A/1, per-rack: 2, unit: 2 }
        links:
          up: { from: leaf, to: spine, rate: 400G }
          down: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: same-rack, rate: 200G }
        power:
          a: { racks: hall/A, volts: 230 V, breaker: 32 A }
          b: { racks: hall/A, volts: 230 V, breaker: 32 A }
        """;

    [Fact]
    public void EveryEndOfEveryCable_HasALabelWithTheFarEnd()
    {
        var judged = PlanBlock.Compile(Plan);
        var rows = Delivered.Table(judged, "labels.csv").Skip(1).Select(r => r.Split(',')).ToList();
        var cables = rows.Where(r => r[0] == "cable").ToList();
        Assert.Contains(cables, r => (r[1], r[2]) == ("HALL.A01-44:02", "HALL.A02-40:01"));
        Assert.Contains(cables, r => (r[1], r[2]) == ("HALL.A02-40:01", "HALL.A01-44:02"));
        // One uplink has two ends; a fan-out of two legs has three plugs.
        Assert.Equal(5, cables.Count);
        Assert.Equal(4, rows.Count(r => r[0] == "device"));
        Assert.Equal(2, rows.Count(r => r[0] == "rack"));
        Assert.Equal(4, rows.Count(r => r[0] == "strip"));
    }

    [Fact]
    public void Sheet_HasThePlacesThePlanSays()
    {
        var root = Delivered.Xml(PlanBlock.Compile(Plan), "labels.html");
        var page = root.Descendants(Delivered.Svg + "svg").Single();
        Assert.Equal(("210mm", "297mm"), (page.Attribute("width")!.Value, page.Attribute("height")!.Value));
        var places = page.WithClass("cut");
        Assert.Equal(15, places.Length);
        // The fifth label begins the second row; the sixth stands one width and a gap further right.
        Assert.Equal((12, 35), (places[4].Real("x"), places[4].Real("y")));
        Assert.Equal((59, 35), (places[5].Real("x"), places[5].Real("y")));
        foreach (var place in places) Assert.True(place.Real("x") + place.Real("width") <= 210);
    }

    [Fact]
    public void Sheets_HoldWhatTheTableHolds()
    {
        var judged = PlanBlock.Compile(Plan);
        var drawn = Delivered.Xml(judged, "labels.html").Words();
        var first = Delivered.Table(judged, "labels.csv").Skip(1).Select(r => r.Split(',')[1]).ToList();
        Assert.All(first, f => Assert.Contains(f, drawn));
    }
}
