using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Space;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a rack holds, weighs, draws and gives off, device by device, with the steps to the pressure on its floor, its heat and its
/// air.</summary>
internal static class WhyRack
{
    /// <summary>The address of a rack's derivation.</summary>
    public static string Address(Site site, RackContents rack) => site.To("why", "rack/" + Site.Rack(rack.Rack));

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string name)
    {
        var book = designed.Racks.Value;
        if (book.Racks.FirstOrDefault(r => Site.Rack(r.Rack) == name) is not { } rack)
            return paper.Unknown("Rack", $"There is no rack '{name}', or nothing stands in it.");
        paper.Heading($"What stands in {rack.Rack.Name}", $"{Numerals.Grouped(rack.Devices.Length)} devices, "
            + $"{Numerals.Whole(rack.UsedUnits)} of {Numerals.Whole(rack.Rack.Type.Units)} units, {Most(rack)}.");
        paper.Markup.Open("p");
        paper.Way("on the drawing", paper.Site.To("racks", Site.Rack(rack.Rack)));
        paper.Markup.Close();
        Devices(paper, designed, rack);
        Steps(paper, designed, rack);
        return true;
    }

    private static void Devices(SheetPaper paper, DesignedPlan designed, RackContents rack)
    {
        var (book, devices) = (designed.Racks.Value, designed.Plan.Devices);
        var table = PaperTable.Open(paper.Markup, "devices, alike ones together, with their cards and modules", "device", "#alike",
            "#units each", "#kg each", "#kg", "#W each, usual", "#W, usual", "#W each, most", "#W, most");
        foreach (var alike in rack.Devices.GroupBy(d => (devices.Group(d).Name, Usual: book.TypicalOf(d), Most: book.MaximumOf(d))))
        {
            var (first, count) = (alike.First(), alike.Count());
            var group = devices.Group(first);
            var weight = RackBook.WeightOf(group).Kilograms;
            var (isWeighed, isPowered) = (RackBook.IsWeightKnown(group), RackBook.IsPowerKnown(group));
            var words = count == 1 ? devices.Name(first) : $"{devices.Name(first)} and {Numerals.Whole(count - 1)} more";
            table.Row(new Entry(words, paper.Site.To("devices", devices.Name(first))), Numerals.Whole(count),
                Numerals.Whole(group.Model.Units), Known(isWeighed, Kilograms(weight)), Known(isWeighed, Kilograms(weight * count)),
                Known(isPowered, Watts(alike.Key.Usual)), Known(isPowered, Watts(alike.Key.Usual * count)),
                Known(isPowered, Watts(alike.Key.Most)), Known(isPowered, Watts(alike.Key.Most * count)));
        }
        table.Row("sum", ["together", Numerals.Whole(rack.Devices.Length), Numerals.Whole(rack.UsedUnits), "",
            AtLeast(rack.IsWeightKnown, Kilograms(rack.Weight.Kilograms)), "", Drawn(rack, rack.Typical), "", Drawn(rack, rack.Maximum)]);
        table.Close();
    }

    private static void Steps(SheetPaper paper, DesignedPlan designed, RackContents rack)
    {
        var (type, standards) = (rack.Rack.Type, designed.Plan.Standards);
        var (gravity, air) = (standards.Facility("gravity", "standard"), new AirStream(standards));
        var density = air.Density(rack.Rack.Hall.Altitude ?? default);
        var steps = PaperTable.OpenNarrow(paper.Markup, "on the floor, as heat and as air", "step", "#value", "from");
        steps.Row("its own weight", type.OwnWeight is { } own ? Kilograms(own.Kilograms) + " kg" : "not known", "the plan");
        var isWeighed = rack.IsWeightKnown && type.OwnWeight is not null;
        steps.Row("on the floor", AtLeast(isWeighed, Kilograms(rack.OnFloor.Kilograms) + " kg"), "devices and rack, as far as known");
        steps.Row("footprint", Numerals.Fixed(type.Width.Metres * type.Depth.Metres, 3) + " m²",
            $"{Numerals.Plain(type.Width.Metres)} m x {Numerals.Plain(type.Depth.Metres)} m");
        steps.Row("pressure", AtLeast(isWeighed, Numerals.Fixed(FloorPressure.Of(rack, standards), 2) + " kPa"),
            $"mass x {Numerals.Plain(gravity.Value)} m/s² / footprint ({gravity.Source})");
        var (heat, stream) = (AirStream.BtuAnHour(rack.Maximum), air.CubicMetresAnHour(rack.Maximum, air.UsualRise, density));
        steps.Row("heat", AtLeast(rack.IsPowerKnown, Numerals.Grouped((decimal)heat) + " BTU/h"), "all power at most becomes heat");
        steps.Row("air", AtLeast(rack.IsPowerKnown, Numerals.Grouped((decimal)stream) + " m³/h"),
            $"warmed by {Numerals.Plain(air.UsualRise.Kelvin)} K at {Numerals.Plain(Math.Round(density, 3))} kg/m³");
        steps.Close();
        paper.Markup.Element("p", "What a floor, a rack and its fixings bear is for who builds it to prove, and local codes prevail.",
            ("class", "soft"));
    }

    private static string Known(bool isKnown, string value) => isKnown ? value : "not known";

    /// <summary>A sum from which parts are missing is no more than a lower bound.</summary>
    private static string AtLeast(bool isWhole, string value) => isWhole ? value : "at least " + value;

    private static string Most(RackContents rack) => rack.IsPowerKnown
        ? Watts(rack.Maximum) + " W at most"
        : Watts(rack.Maximum) + " W at most of those whose power is known";

    private static string Drawn(RackContents rack, Watts value) => AtLeast(rack.IsPowerKnown, Watts(value));

    private static string Kilograms(double value) => Numerals.Fixed(value, 1);

    private static string Watts(Watts value) => Numerals.Grouped((decimal)value.Value, 1);
}
