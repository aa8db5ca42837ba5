using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Findings;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
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
            new("from-panel", 16), new("from-rack", 16), new("from-places", 11), new("to-panel", 16), new("to-rack", 16),
            new("to-places", 9), new("cassette", 18), new("cassette-at", 11), new("method", 8), new("polarity", 12), new("verdict", 9),
            new("findings", 14),
            new("ports", 7, ColumnKind.Whole), new("ports-used", 10, ColumnKind.Whole), new("fibres-lit", 10, ColumnKind.Whole),
            new("fibres-lit-%", 11, ColumnKind.Real), new("fibres-spare", 12, ColumnKind.Whole), new("fibres-lost", 11, ColumnKind.Whole),
            .. editions.Select(e => new Column("test-dB-" + e, 11, ColumnKind.Real)), new("tightest-type", 18),
            new("allowed-dB", 10, ColumnKind.Real), new("channel-dB", 11, ColumnKind.Real), new("trunk-dB", 9, ColumnKind.Real),
            new("trunk-most-dB", 13, ColumnKind.Real), new("existing", 8),
            new("pathways", 40), new("moved-off", 20), new("lengths-m", 20),
        ], () => designed.Plant.Value.Trunks.Select(t => Row(designed, t)));
    }

    private static Cell[] Row(DesignedPlan designed, TrunkState state)
    {
        var (trunk, devices) = (state.Trunk, designed.Plan.Devices);
        return
        [
            trunk.Name, trunk.Count, trunk.Cable.Name, state.Length is { } length ? Math.Round(length.Metres, 2) : Cell.Empty, state.Fibres,
            devices.Name(trunk.From), devices.Rack(trunk.From)?.Name, Places(designed, trunk, isFar: false),
            devices.Name(trunk.To), devices.Rack(trunk.To)?.Name, Places(designed, trunk, isFar: true),
            trunk.Cassette?.Name, trunk.CassetteEnds.ToString().ToLowerInvariant(), trunk.MethodName,
            PolarityJson.Polarity(state.Polarity), Checks.Word(VerdictOf(designed, state)), Codes(designed, trunk),
            trunk.Ports, state.Ports, state.FibresLit,
            Math.Round(state.Utilisation.Percent, 1), state.Spare, state.Lost,
            .. state.Tests.Select(t => t.Limit is { } limit ? (Cell)Math.Round(limit.Value, 3) : Cell.Empty),
            .. state.Tests.IsEmpty ? designed.Plan.Standards.CablingEditions.Select(_ => Cell.Empty) : [],
            .. Application(designed, state), trunk.IsExisting ? "yes" : "",
            Each(trunk, k => string.Join(" ", designed.Pathways.Value.Through(k))), Each(trunk, designed.Pathways.Value.MovedOff),
            Each(trunk, k => designed.Design.Trunks.Of(trunk, k.Number) is { } own ? Numerals.Plain(Math.Round(own.Metres, 2)) : ""),
        ];
    }

    /// <summary>What becomes of light in them, and no better than what the findings about them say.</summary>
    internal static Verdict VerdictOf(DesignedPlan designed, TrunkState state) =>
        Findings(designed, state.Trunk).Any(f => f.Severity == Severity.Error) || state.IsAboveEveryTest
            ? Verdict.Fail
            : state.Verdict;

    private static string Codes(DesignedPlan designed, TrunkGroup trunk) =>
        string.Join(" ", Findings(designed, trunk).Where(f => f.Severity != Severity.Advice).Select(f => f.Kind.Code).Distinct());

    private static IEnumerable<Finding> Findings(DesignedPlan designed, TrunkGroup trunk) =>
        designed.Findings.Where(f => f.Span == trunk.Span && f.Subject == trunk.Name);

    /// <summary>What is said of each of a group, once where it is the same of all, else by their numbers.</summary>
    private static string Each(TrunkGroup trunk, Func<CableKey, string> said)
    {
        var words = Enumerable.Range(0, trunk.Count)
            .GroupBy(n => said(new CableKey(CableKind.Trunk, trunk.Index, n)), n => Numerals.Whole(n + 1)).ToList();
        return words is [var only] ? only.Key
            : string.Join("; ", words.Where(w => w.Key.Length > 0).Select(w => $"{string.Join(",", w)}: {w.Key}"));
    }

    private static string Places(DesignedPlan designed, TrunkGroup trunk, bool isFar)
    {
        var first = designed.Plant.Value.SlotOf(trunk, isFar);
        return trunk.Count == 1 ? Numerals.Whole(first) : $"{Numerals.Whole(first)}-{Numerals.Whole(first + trunk.Count - 1)}";
    }

    private static Cell[] Application(DesignedPlan designed, TrunkState state) =>
        designed.Books.TrunkBudgets.Value[state.Trunk.Index] is { } tightest
        ?
        [
            tightest.Type, Math.Round(tightest.Allowed, 3), Math.Round(tightest.Channel, 3), Math.Round(tightest.Trunk, 3),
            Math.Round(tightest.TrunkMost, 3),
        ]
        : [Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty];
}
