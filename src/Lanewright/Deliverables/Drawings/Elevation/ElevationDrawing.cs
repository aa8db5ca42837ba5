using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Plant;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Model.Devices;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Elevation;

/// <summary>Racks of a row as they look from the front or from the rear, heights to scale: devices in their units, units numbered from the
/// bottom, and below each rack what it holds, weighs and draws. From the rear the order of the racks is turned round, and the strips of the
/// feeds stand beside the posts.</summary>
internal sealed class ElevationDrawing(
    DesignedPlan designed, ImmutableArray<RackContents> racks, Lazy<ILookup<int, StripLoad>> strips, bool isRear)
{
    private const double UnitHeight = 13;
    private const double Scale = 20;
    private const double Strip = 7;
    private const int LeastRacks = 5;
    private const double LineStep = 13;
    private const double SmallSize = 10.5;
    private const double TinySize = 9.5;
    private const double HeadRoom = 18;
    private const double NameShare = 0.42;

    private readonly Lazy<int> feedLines = new(() => designed.Plan.Power.IsEmpty || racks.SelectMany(r => strips.Value[r.Rack.Index])
        .All(s => TextFit.Width($"{s.Feed.Name} {Figures(s)}", SmallSize) <= (PitchOf(racks.Length) - 10) / Bold) ? 1 : 2);

    /// <summary>Racks share the width of the sheet; a few are not drawn wider than many would look.</summary>
    private double Pitch => PitchOf(racks.Length);

    private static double PitchOf(int racks) => (Sheet.Width - (2 * Sheet.Margin)) / Math.Max(LeastRacks, racks);

    private double Inner => Pitch - Scale - (2 * Strip) - 12;

    /// <summary>Writes the drawing.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var most = racks.Max(r => r.Rack.Type.Units);
        var top = Sheet.Top + HeadRoom;
        var floor = top + (most * UnitHeight);
        var bottom = floor + 16 + ((4 + (2 * feedLines.Value)) * LineStep) + CautionRoom + (HasLegend ? LegendRoom : 0);
        var row = $"{racks[0].Rack.Hall.FullName}, row {racks[0].Rack.Row}";
        var block = TitleBlock.Of(designed.Plan, row,
            ("hall and row", row, 2.4), ("seen from", isRear ? "the rear" : "the front", 1.2), ("racks", Numerals.Whole(racks.Length), 0.8),
            ("heights to scale", "1 unit = 44.45 mm", 1.9));
        var head = new SheetHead(id, $"Racks of {row}, {(isRear ? "rear" : "front")}",
            "Units from the bottom. Weights without modules, cables and the racks themselves; power with modules"
                + (designed.Plan.Power.IsEmpty ? "." : "; amperes: all feeds up / another lost."), Description());
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            for (var i = 0; i < racks.Length; i++)
            {
                var place = isRear ? racks.Length - 1 - i : i;
                Rack(canvas, racks[i], Sheet.Margin + (place * Pitch), floor);
            }
            canvas.Line(Sheet.Margin, floor + 1.2, Sheet.Width - Sheet.Margin, floor + 1.2, "heavy");
            if (HasLegend) Legend(canvas, bottom - 4 - CautionRoom);
            canvas.Text(Sheet.Margin, bottom - 4, Caution, "small soft");
        });
    }

    private const double CautionRoom = 18;
    private const double LegendRoom = 18;

    /// <summary>What the boxes mean: places of panels in front, strips in the rear.</summary>
    private bool HasLegend => isRear
        ? racks.Any(r => strips.Value[r.Rack.Index].Any())
        : racks.SelectMany(r => r.Devices).Any(d => designed.Plant.Value.Fronts.Value.Of(d).Count > 0);

    private void Legend(Canvas canvas, double y)
    {
        (string Style, string Words)[] keys = isRear
            ? [("full", "strip of a feed"), ("actfill", "one that carries more than it may when another feed is lost")]
            : [("full", "place of a panel with cords"), ("hollow", "a trunk ends there, no cord"), ("faint", "free")];
        double x = Sheet.Margin;
        foreach (var (style, words) in keys)
        {
            canvas.Box(x, y - SmallSize + 2, Strip + 2, SmallSize - 3, style);
            canvas.Text(x + Strip + 7, y, words, "small");
            x += Strip + 7 + TextFit.Width(words, SmallSize) + 24;
        }
    }

    private const string Caution = "Heavy devices take two persons or a lift and go in lowest; mains work is for licensed persons. "
        + "Local rules and "
        + "the labels of the equipment prevail.";

    private void Rack(Canvas canvas, RackContents contents, double x, double floor)
    {
        var units = contents.Rack.Type.Units;
        var top = floor - (units * UnitHeight);
        var left = x + Scale + Strip + 2;
        canvas.Text(left + (Inner / 2), top - 6, contents.Rack.Row + Numerals.Padded(contents.Rack.Number, 2), "bold mid");
        canvas.Box(left, top, Inner, units * UnitHeight, "box");
        for (var unit = 1; unit <= units; unit++)
        {
            if (unit % 2 == 0) canvas.Text(left - Strip - 4, floor - ((unit - 1) * UnitHeight) - 3.5, Numerals.Whole(unit), "tiny "
                + "soft end");
            canvas.Line(left, floor - (unit * UnitHeight), left + Inner, floor - (unit * UnitHeight), "faint");
        }
        foreach (var run in Runs(contents)) Devices(canvas, run, left, floor);
        if (isRear) Strips(canvas, contents, left, top, floor);
        Below(canvas, contents, x, floor);
    }

    /// <summary>Devices with a stated unit; a long run of devices alike is drawn one by one and named once.</summary>
    private IEnumerable<(int Device, DeviceGroup Group, int Unit, string Name)> Runs(RackContents contents) =>
        from device in contents.Devices
        let unit = designed.Plan.Devices.Unit(device)
        where unit > 0
        select (device, designed.Plan.Devices.Group(device), unit, designed.Plan.Devices.Name(device));

    private void Devices(Canvas canvas, (int Device, DeviceGroup Group, int Unit, string Name) device, double left, double floor)
    {
        var height = device.Group.Model.Units * UnitHeight;
        var y = floor - ((device.Unit - 1) * UnitHeight) - height;
        canvas.Box(left + 1, y + 0.6, Inner - 2, height - 1.2, isRear ? "hollow" : "block");
        var places = isRear ? [] : designed.Plant.Value.Fronts.Value.Of(device.Device);
        var room = places.Count == 0 ? Inner - 10 : (Inner * NameShare) - 8;
        canvas.Text(left + 5, y + (height / 2) + 3.4, TextFit.Middle(device.Name, room, TinySize), "tiny");
        if (places.Count > 0) Front(canvas, places, device.Group.Model.Units, left + (Inner * NameShare), y);
    }

    /// <summary>The places of a panel: filled where cords are plugged in, hollow where a trunk ends and waits, faint where none
    /// does.</summary>
    private void Front(Canvas canvas, IReadOnlyList<PanelPlace> places, int units, double left, double y)
    {
        var columns = (places.Count + units - 1) / units;
        var width = ((Inner * (1 - NameShare)) - 4) / columns;
        for (var i = 0; i < places.Count; i++)
        {
            var style = places[i].Trunk is null ? "faint" : places[i].Used.IsEmpty ? "hollow" : "full";
            var (x, top) = (left + (i % columns * width) + 0.5, y + (i / columns * UnitHeight) + 3);
            canvas.Box(x, top, Math.Max(1, width - 1), UnitHeight - 6, style);
        }
    }

    private void Strips(Canvas canvas, RackContents contents, double left, double top, double floor)
    {
        var own = strips.Value[contents.Rack.Index].ToList();
        for (var i = 0; i < own.Count && i < 2; i++)
        {
            var x = i == 0 ? left - Strip - 1 : left + Inner + 1;
            canvas.Box(x, top + UnitHeight, Strip, floor - top - (2 * UnitHeight), own[i].AfterLoss > own[i].Limit ? "actfill" : "full");
            var name = TextFit.Middle(own[i].Feed.Name, (floor - top) / 2, TinySize);
            canvas.Upright(x + Strip - 1, floor - UnitHeight - 6, name, "tiny light");
        }
    }

    /// <summary>What breaks a limit has the accent of the house.</summary>
    private void Below(Canvas canvas, RackContents contents, double x, double floor)
    {
        var (heavy, hot) = (contents.Rack.Type.WeightLimit, contents.Rack.Type.PowerLimit);
        (string Text, bool IsOver)[] lines =
        [
            ($"{Numerals.Whole(contents.UsedUnits)} {(contents.UsedUnits == 1 ? "unit" : "units")}, "
                + $"{Numerals.Whole(contents.FreeUnits)} free", false),
            ((contents.IsWeightKnown ? "" : "at least ") + Numerals.Shown(contents.Weight.Kilograms, "kg")
                + (heavy is { } most ? $" of {Numerals.Shown(most.Kilograms, "kg")}" : ""),
                heavy is { } kilograms && contents.Weight > kilograms),
            ($"usual {Numerals.Grouped((decimal)Math.Round(contents.Typical.Value))} W", false),
            (hot is { } watts
                ? $"{Most(contents)} {Numerals.Fixed(contents.Maximum.Value / 1000, 1)} of {Numerals.Fixed(watts.Value / 1000, 1)} kW"
                : $"{Most(contents)} {Numerals.Grouped((decimal)Math.Round(contents.Maximum.Value))} W",
                hot is { } cooled && contents.Maximum > cooled),
            .. designed.Plan.Power.IsEmpty ? [] : strips.Value[contents.Rack.Index].Take(2).SelectMany(Current),
        ];
        for (var i = 0; i < lines.Length; i++)
            canvas.Text(x + 6, floor + 18 + (i * LineStep), TextFit.Short(lines[i].Text, Pitch - 10, SmallSize),
                lines[i].IsOver ? "small alert" : "small");
    }

    /// <summary>A sum from which a device is missing is no more than a lower bound.</summary>
    private static string Most(RackContents contents) => contents.IsPowerKnown ? "most" : "most, as known,";

    /// <summary>The current of a strip, and what it is after the loss of another feed; on a sheet where a name and its figures do not fit
    /// one line, names stand above them.</summary>
    private IEnumerable<(string Text, bool IsOver)> Current(StripLoad strip)
    {
        var (name, isOver) = (strip.Feed.Name, strip.AfterLoss > strip.Limit);
        if (feedLines.Value == 1)
        {
            yield return ($"{name} {Figures(strip)}", isOver);
            yield break;
        }
        yield return (TextFit.Middle(name, (Pitch - 10) / Bold, SmallSize), isOver);
        yield return (Figures(strip), isOver);
    }

    private static string Figures(StripLoad strip)
    {
        var after = strip.Lost is null ? "" : "/" + Numerals.Fixed(strip.AfterLoss.Value, 1);
        return $"{Numerals.Fixed(strip.Highest.Value, 1)}{after} of {Numerals.Fixed(strip.Limit.Value, 1)} A";
    }

    /// <summary>Names of feeds that break a limit stand in bold, which is wider.</summary>
    private const double Bold = 1.12;

    private string Description() => string.Join(" ", racks.Select(r =>
        $"Rack {r.Rack.Name}: {Numerals.Whole(r.Devices.Length)} devices, {Numerals.Whole(r.FreeUnits)} units free, "
        + $"{Numerals.Shown(r.Weight.Kilograms, "kg")}, at most {Numerals.Shown(r.Maximum.Value, "W")}."));
}
