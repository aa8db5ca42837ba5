using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Space;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a rack: units, weight, power, heat and air.</summary>
public static class RacksView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("racks",
    [
        new("rack", 18), new("kind", 12), new("devices", 9, ColumnKind.Whole, IsSummed: true),
        new("units-used", 11, ColumnKind.Whole, IsSummed: true),
        new("units-free", 11, ColumnKind.Whole, IsSummed: true), new("weight-kg", 11, ColumnKind.Real, IsSummed: true),
        new("weight-limit-kg", 14, ColumnKind.Real), new("floor-kPa", 10, ColumnKind.Real),
        new("typical-W", 11, ColumnKind.Real, IsSummed: true), new("most-W", 11, ColumnKind.Real, IsSummed: true),
        new("heat-BTU/h", 12, ColumnKind.Real, IsSummed: true), new("air-m3/h", 11, ColumnKind.Real, IsSummed: true),
    ], () => designed.Racks.Value.Racks.Select(r => Row(designed, r)));

    private static Cell[] Row(DesignedPlan designed, RackContents contents)
    {
        var air = new AirStream(designed.Plan.Standards);
        var density = air.Density(contents.Rack.Hall.Altitude ?? default);
        return
        [
            contents.Rack.Name, contents.Rack.Type.Name, contents.Devices.Length, contents.UsedUnits, contents.FreeUnits,
            Math.Round(contents.Weight.Kilograms, 1), contents.Rack.Type.WeightLimit is { } most ? most.Kilograms : Cell.Empty,
            Math.Round(FloorPressure.Of(contents, designed.Plan.Standards), 2),
            Math.Round(contents.Typical.Value), Math.Round(contents.Maximum.Value), Math.Round(AirStream.BtuAnHour(contents.Maximum)),
            Math.Round(air.CubicMetresAnHour(contents.Maximum, air.UsualRise, density)),
        ];
    }
}
