using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Heat;

/// <summary>What the devices of two rows do with the air of the aisle between them. Those that breathe from side to side, and panels, do
/// nothing with it.</summary>
/// <param name="Aisle">The aisle.</param>
/// <param name="Near">What the row of the smaller distance across the hall does.</param>
/// <param name="Far">What the row behind it does.</param>
public sealed record AisleAir(Aisle Aisle, AirUse Near, AirUse Far)
{
    /// <summary>Whether one row breathes what the other blows out.</summary>
    public bool IsMixed => (Near.Blows && Far.Breathes) || (Far.Blows && Near.Breathes);

    /// <summary>Whether it is not known which sides of both rows are fronts, where both move air.</summary>
    public bool IsOpen => Near.Moves && Far.Moves && (Aisle.Near.Fronts is null || Aisle.Far.Fronts is null);

    /// <summary>All aisles of a plan between rows that both move air.</summary>
    public static ImmutableArray<AisleAir> Of(RackBook book)
    {
        var devices = book.Plan.Devices;
        var ofRow = book.Racks.GroupBy(r => (r.Rack.Hall.Index, r.Rack.Row)).ToDictionary(
            g => g.Key, g => g.SelectMany(r => r.Devices).Select(d => devices.Group(d).Model)
                .Where(m => m.Kind != DeviceKind.Panel).Select(m => m.Airflow).ToHashSet());
        return
        [
            .. from aisle in Aisle.Of(book.Plan)
               let near = Use(aisle.Near, RowSide.Far)
               let far = Use(aisle.Far, RowSide.Near)
               where near.Moves && far.Moves
               select new AisleAir(aisle, near, far),
        ];

        AirUse Use(Rack row, RowSide toAisle)
        {
            if (!ofRow.TryGetValue((row.Hall.Index, row.Row), out var flows)) return default;
            var (forth, back) = (flows.Contains(DeviceModel.FrontToBack), flows.Contains(DeviceModel.BackToFront));
            if (row.Fronts is not { } fronts) return new AirUse(forth || back, false, false);
            return fronts == toAisle ? new AirUse(forth || back, forth, back) : new AirUse(forth || back, back, forth);
        }
    }
}
