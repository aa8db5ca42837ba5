using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Plant;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a group of trunks: where they end, what they carry, what the cabling test may show.</summary>
public static class TrunksView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed)
    {
        var editions = designed.Plan.Standards.CablingEditions.ToList();
        return new("trunks",
        [
            new("trunk", 16), new("count", 7, ColumnKind.Whole), new("cable", 18), new("length-m", 9, ColumnKind.Real),
            new("fibres", 8, ColumnKind.Whole),
            new("from-panel", 16), new("from-rack", 16), new("to-panel", 16), new("to-rack", 16), new("cassette", 18), new("method", 8),
            new("polarity", 12), new("ports", 7, ColumnKind.Whole), new("ports-used", 10, ColumnKind.Whole),
            new("fibres-lit", 10, ColumnKind.Whole), new("fibres-lit-%", 11, ColumnKind.Real),
            .. editions.Select(e => new Column("test-dB-" + e, 11, ColumnKind.Real)), new("existing", 8),
        ], () => designed.Plant.Value.Trunks.Select(t => Row(designed, t)));
    }

    private static Cell[] Row(DesignedPlan designed, TrunkState state)
    {
        var (trunk, devices) = (state.Trunk, designed.Plan.Devices);
        return
        [
            trunk.Name, trunk.Count, trunk.Cable.Name, state.Length is { } length ? Math.Round(length.Metres, 2) : Cell.Empty, state.Fibres,
            devices.Name(trunk.From), devices.Rack(trunk.From)?.Name, devices.Name(trunk.To), devices.Rack(trunk.To)?.Name,
            trunk.Cassette?.Name, (trunk.Cassette is null ? "type " : "") + trunk.Method, PolarityJson.Polarity(state.Polarity.IsCrossed),
            trunk.Ports, state.Ports, state.FibresLit, Math.Round(state.Utilisation.Percent, 1),
            .. state.Tests.Select(t => t.Limit is { } limit ? (Cell)Math.Round(limit.Value, 3) : Cell.Empty),
            .. state.Tests.IsEmpty ? designed.Plan.Standards.CablingEditions.Select(_ => Cell.Empty) : [],
            trunk.IsExisting ? "yes" : "",
        ];
    }
}
