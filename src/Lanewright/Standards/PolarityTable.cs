using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>The types of array cable, adapter, cord and transition, and the methods made of them.</summary>
public sealed class PolarityTable
{
    private readonly FactTable table;

    /// <summary>Takes the rows.</summary>
    public PolarityTable(FactTable table)
    {
        this.table = table;
        Parts = [.. table.Sheets.Select(Read).OfType<ArrayPart>()];
        var subjects = table.Sheets.Select(s => s.Subject).ToList();
        Methods = [.. subjects.Where(s => s.StartsWith(Method, StringComparison.Ordinal)).Select(s => s[Method.Length..])];
        Positions =
        [
            .. table.Sheets.Where(s => s.Subject.StartsWith(Array, StringComparison.Ordinal))
                .Select(s => Numerals.TryWhole(s.Subject.AsSpan(Array.Length), out var n) ? (int)n : 0),
        ];
    }

    /// <summary>All types of parts, in table order.</summary>
    public ImmutableArray<ArrayPart> Parts { get; }

    /// <summary>The polarity methods by name.</summary>
    public ImmutableArray<string> Methods { get; }

    /// <summary>Sizes of array connectors.</summary>
    public ImmutableArray<int> Positions { get; }

    /// <summary>A type by kind and name, or null.</summary>
    public ArrayPart? Part(ArrayPartKind kind, string name) => Parts.FirstOrDefault(p => p.Kind == kind && p.Name == name);

    /// <summary>The parts of a method from end to end, and the type of its adapters.</summary>
    public (ImmutableArray<string> Chain, string Adapter) MethodOf(string name) =>
        table[Method + name] is { } sheet ? (sheet.Words("chain"), sheet.Word("adapter")) : ([], "");

    /// <summary>Lanes each way of parallel optics on an array of so many positions: transmitters on the first positions, receivers on the
    /// last. Null where no order of lanes is known.</summary>
    public Known<int>? LanesOf(int positions) =>
        table[Array + Numerals.Whole(positions)] is { } sheet && sheet.Real("lanes") is { Value: > 0 } lanes
            ? lanes.As(v => (int)v)
            : null;

    /// <summary>Whether it is known how a reversing cable or adapter leads so many positions.</summary>
    public bool IsReversalKnown(int positions) => table[Array + Numerals.Whole(positions)]?.Word("reversed") != Unknown;

    private const string Method = "method-";
    private const string Array = "array-";
    private const string Unknown = "unknown";

    private static ArrayPart? Read(FactSheet sheet)
    {
        var dash = sheet.Subject.IndexOf('-', StringComparison.Ordinal);
        if (dash < 0 || MapOf(sheet.Word("map")) is not { } map) return null;
        ArrayPartKind? kind = sheet.Subject[..dash] switch
        {
            "cable" => ArrayPartKind.Cable,
            "adapter" => ArrayPartKind.Adapter,
            "cord" => ArrayPartKind.Cord,
            "transition" => ArrayPartKind.Transition,
            _ => null,
        };
        return kind is { } known
            ? new ArrayPart(known, sheet.Subject[(dash + 1)..], map, sheet.Word("angled") != "no", sheet.Word("order") != Unknown,
                sheet.SourceOf("map"))
            : null;
    }

    private static ArrayMap? MapOf(string word) => word switch
    {
        "straight" => ArrayMap.Straight,
        "reversed" => ArrayMap.Reversed,
        "pair-flipped" => ArrayMap.PairFlipped,
        "pairs-reversed" => ArrayMap.PairsReversed,
        "end-to-end" => ArrayMap.EndToEnd,
        _ => null,
    };
}
