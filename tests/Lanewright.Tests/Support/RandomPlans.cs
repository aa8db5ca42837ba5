using System.Globalization;
using Lanewright.Model.Binding;
using Lanewright.Standards;

namespace Lanewright.Tests.Support;

/// <summary>Plans drawn by a seed: well-formed, and otherwise as sensible or as silly as the draw has it.</summary>
internal sealed class RandomPlans(int seed)
{
    private static readonly string[] Patterns = ["paired", "each-to-each", "striped", "same-rack", "same-row"];
    private static readonly string[] Rates = ["1G", "10G", "25G", "40G", "50G", "100G", "200G", "400G", "800G", "1600G"];

    private readonly Random random = new(seed);

    /// <summary>The text of a plan.</summary>
    public string Next()
    {
        var lines = new List<string>
        {
            "lanewright: 1",
            Policy(),
            "sites: { s: { halls: { "
            + "h: { rows: { A: { racks: 6 }, B: { racks: 6, y: 4 m } } }, g: { rows: { C: { racks: 4 } } } } }, "
            + "t: { east: 40 km, north: 9 km }, u: { }, v: { } }",
        };
        if (Chance(0.8)) lines.Add($"routes: [ {{ from: h, to: g, length: {random.Next(5, 3000)} m }} ]");
        lines.Add("devices:");
        var groups = random.Next(2, 6);
        for (var i = 0; i < groups; i++) lines.Add($"  g{i}: {Group()}");
        lines.Add("links:");
        for (var i = 0; i < random.Next(1, 7); i++) lines.Add($"  l{i}: {Link(groups)}");
        if (Chance(0.4))
        {
            lines.Add("demands:");
            for (var i = 0; i < random.Next(1, 4); i++) lines.Add($"  d{i}: {Demand(groups)}");
        }
        if (new Random(seed).NextDouble() < 0.4) lines.AddRange(Lines(new Random(seed + 1)));
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Spans and lines, drawn apart so that the other sections of a seed stay what they were.</summary>
    private static List<string> Lines(Random draw)
    {
        string[] sites = ["s", "t", "u", "v"];
        string[] what = ["type: 400ZR", "rate: 400G", "rate: 10G", "type: 800ZR", "rate: 100G", "type: 10G-DWDM"];
        List<string> text = ["spans:"];
        for (var i = 0; i < draw.Next(1, 7); i++)
        {
            text.Add($"  f{i}: {{ from: {sites[draw.Next(4)]}, to: {sites[draw.Next(4)]}, length: {draw.Next(1, 160)} km, "
                + $"connectors: {draw.Next(0, 9)}, ducts: [d{draw.Next(3)}], pairs: {draw.Next(1, 9)} }}");
        }
        text.Add("lines:");
        for (var i = 0; i < draw.Next(1, 4); i++)
        {
            text.Add($"  w{i}: {{ from: {sites[draw.Next(4)]}, to: {sites[draw.Next(4)]}, {what[draw.Next(6)]}, "
                + $"channels: {draw.Next(1, 49)}, routes: {draw.Next(1, 3)} }}");
        }
        return text;
    }

    private string Demand(int groups)
    {
        var kind = Pick(["spread", "all-to-all", "permutation", "incast", "hose"]);
        var sides = kind is "spread" or "incast"
            ? $"from: g{random.Next(groups)}, to: g{random.Next(groups)}{(Chance(0.5) ? "-1" : "")}"
            : $"among: [g{random.Next(groups)}, g{random.Next(groups)}]";
        var rate = Chance(0.6) ? $", rate: {Pick(Rates)}" : "";
        return $"{{ kind: {kind}, {sides}{rate}{(Chance(0.3) ? $", flows: {random.Next(1, 40)}" : "")} }}";
    }

    private string Policy() => Chance(0.5)
        ? "policy: {}"
        : string.Create(CultureInfo.InvariantCulture,
            $"policy: {{ connection-loss: {random.Next(0, 100) / 100.0} dB, connection-grade: {Pick(["B", "C", "D"])}, "
            + $"spares: {random.Next(0, 10)} %, drafts: {Pick(["yes", "no"])}, "
            + $"prefer: [{Pick([.. PlanLanguage.Media])}], forbid: [{Pick([.. PlanLanguage.Media])}] }}");

    private string Group()
    {
        var model = Pick(CatalogueBinder.Shipped.Devices);
        var cards = model.Slots > 0 && Chance(0.7) ? $", cards: [{Pick(CatalogueBinder.Shipped.Cards).Name}]" : "";
        var place = Chance(0.8)
            ? $", racks: {Pick(["h/A", "h/B", "g/C"])}/1..{random.Next(1, 5)}, "
                + $"per-rack: {random.Next(1, 4)}, unit: {random.Next(1, 40)}"
            : $", count: {random.Next(1, 9)}";
        return $"{{ model: {model.Name}{cards}{place} }}";
    }

    private string Link(int groups)
    {
        var keys = new List<string>
        {
            $"from: {End(groups)}",
            $"to: {End(groups)}",
            $"rate: {Pick(Rates)}",
            $"pattern: {Pick(Patterns)}",
            $"count: {random.Next(1, 4)}",
        };
        if (Chance(0.3)) keys.Add($"medium: [{Pick([.. PlanLanguage.Media])}, {Pick([.. PlanLanguage.Media])}]");
        if (Chance(0.2)) keys.Add($"type: {Pick(StandardsLibrary.Shipped.InterfaceTypes).Name}");
        if (Chance(0.3)) keys.Add($"length: {random.Next(1, 5000)} m");
        if (Chance(0.3)) keys.Add($"connections: {random.Next(0, 12)}");
        if (Chance(0.1)) keys.Add($"reflectance: -{random.Next(20, 65)} dB");
        if (Chance(0.1)) keys.Add($"assembly: {Pick(CatalogueBinder.Shipped.Assemblies).Name}");
        return "{ " + string.Join(", ", keys) + " }";
    }

    private string End(int groups)
    {
        var group = $"g{random.Next(groups)}";
        if (Chance(0.6)) return group;
        var keys = new List<string> { $"of: {group}" };
        if (Chance(0.5)) keys.Add($"breakout: {Pick(["1", "2", "4", "8"])}x{Pick(Rates)}");
        if (Chance(0.3)) keys.Add($"ports: '{random.Next(1, 20)}..{random.Next(20, 50)}'");
        if (Chance(0.3)) keys.Add($"module: {Pick(CatalogueBinder.Shipped.Modules).Name}");
        if (Chance(0.2)) keys.Add("adapter: yes");
        if (Chance(0.2)) keys.Add($"autonegotiation: {Pick(["yes", "no"])}");
        return "{ " + string.Join(", ", keys) + " }";
    }

    private bool Chance(double p) => random.NextDouble() < p;

    private T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];
}
