using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Space;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a rack, empty ones as well: units, weight, power, heat and air. What is not known of a device is not known of its
/// rack, and its cell stays empty.</summary>
public static class RacksView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("racks",
    [
        new("rack", 18), new("kind", 12), new("devices", 9, ColumnKind.Whole, IsSummed: true),
        new("units-used", 11, ColumnKind.Whole, IsSummed: true),
        new("units-free", 11, ColumnKind.Whole, IsSummed: true), new("weight-kg", 11, ColumnKind.Real, IsSummed: true),
        new("rack-kg", 9, ColumnKind.Real, IsSummed: true), new("weight-limit-kg", 14, ColumnKind.Real),
        new("floor-kPa", 10, ColumnKind.Real),
        new("typical-W", 11, ColumnKind.Real, IsSummed: true), new("most-W", 11, ColumnKind.Real, IsSummed: true),
        new("heat-BTU/h", 12, ColumnKind.Real, IsSummed: true), new("air-m3/h", 11, ColumnKind.Real, IsSummed: true),
        new("air-CFM", 9, ColumnKind.Real, IsSummed: true),
    ], () => designed.Racks.Value.All.Select(r => Row(designed, r)));

    private static Cell[] Row(DesignedPlan designed, RackContents contents)
    {
        var air = new AirStream(designed.Plan.Standards);
        var density = air.Density(contents.Rack.Hall.Altitude ?? default);
        var stream = air.CubicMetresAnHour(contents.Maximum, air.UsualRise, density);
        var (weight, own) = (contents.Weight.Kilograms, contents.Rack.Type.OwnWeight);
        Cell Heavy(double value, int digits) => contents.IsWeightKnown ? Math.Round(value, digits) : Cell.Empty;
        Cell Drawn(double value) => contents.IsPowerKnown ? Math.Round(value) : Cell.Empty;
        return
        [
            contents.Rack.Name, contents.Rack.Type.Name, contents.Devices.Length, contents.UsedUnits, contents.FreeUnits,
            Heavy(weight, 1), own is { } rack ? rack.Kilograms : Cell.Empty,
            contents.Rack.Type.WeightLimit is { } most ? most.Kilograms : Cell.Empty,
            own is null ? Cell.Empty : Heavy(FloorPressure.Of(contents, designed.Plan.Standards), 2),
            Drawn(contents.Typical.Value), Drawn(contents.Maximum.Value), Drawn(AirStream.BtuAnHour(contents.Maximum)),
            Drawn(stream), Drawn(AirStream.CubicFeetAMinute(stream)),
        ];
    }
}
