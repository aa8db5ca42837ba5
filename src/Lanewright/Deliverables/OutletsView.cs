using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Power;
using Lanewright.Model;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a device and feed: at which phase it is plugged in, so that the phases carry what is reckoned.</summary>
public static class OutletsView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("outlets",
    [
        new("rack", 18), new("unit", 6, ColumnKind.Whole), new("device", 18), new("feed", 12), new("outlet", 8),
        new("most-W", 9, ColumnKind.Real, IsSummed: true), new("most-A", 9, ColumnKind.Real),
    ], () => designed.Strips.SelectMany(s => s.Plugs.Select(p => (Strip: s, Plug: p)))
        .OrderBy(p => p.Strip.Rack.Index).ThenBy(p => designed.Plan.Devices.Unit(p.Plug.Use.Device)).ThenBy(p => p.Plug.Use.Device)
        .Select(p => Row(designed.Plan, p.Strip, p.Plug)));

    private static Cell[] Row(Plan plan, StripLoad strip, StripPlug plug)
    {
        var unit = plan.Devices.Unit(plug.Use.Device);
        return
        [
            strip.Rack.Name, unit > 0 ? unit : Cell.Empty, plan.Devices.Name(plug.Use.Device), strip.Feed.Name,
            PhaseCurrents.NameOf(plug.Section, strip.Feed), Math.Round(plug.Drawn.Value, 1),
            Math.Round(PhaseCurrents.OfOutlet(plug.Drawn, strip.Feed, plan.Policy.PowerFactor.Value).Value, 2),
        ];
    }
}
