using System.Globalization;

namespace Lanewright.Bench;

/// <summary>A plan with about as many links as wanted: halls of sixteen rows, racks of hosts with two leaves, planes of spines.</summary>
internal static class GeneratedPlan
{
    private const int HostsPerRack = 16;
    private const int UplinksPerLeaf = 8;

    /// <summary>Links one rack makes: each host to both leaves, each leaf to the spines, a management port a host.</summary>
    private const int LinksPerRack = (HostsPerRack * 2) + (UplinksPerLeaf * 2) + HostsPerRack;

    /// <summary>Writes the plan.</summary>
    public static string Of(int links)
    {
        var racks = Math.Max(4, links / LinksPerRack);
        var rows = (racks + 15) / 16;
        // 64 leaves fill a spine of 64 ports a plane of eight spines.
        var pods = (racks * 2 + 63) / 64;
        var spineRows = ((pods * 8) + 63) / 64;
        return string.Create(CultureInfo.InvariantCulture, $$"""
            lanewright: 1
            name: generated-{{links}}
            policy: { connection-grade: B, connection-loss: 0.3 dB }
            sites:
              site:
                halls:
                  hall:
                    rows:
            {{Rows(rows, spineRows)}}
            devices:
            {{Devices(rows, pods, spineRows)}}
            links:
            {{Links(rows, pods)}}
            """);
    }

    private static string Rows(int rows, int spineRows) => Lines(
        Enumerable.Range(1, rows).Select(r => $"          R{r}: {{ racks: 16, y: {r * 3} m }}")
            .Concat(Enumerable.Range(1, spineRows).Select(r => $"          S{r}: {{ racks: 16, y: {(rows + r) * 3} m }}")));

    private static string Devices(int rows, int pods, int spineRows) => Lines(
        Enumerable.Range(1, rows).SelectMany(r => new[]
            {
                $"  leaf-{r}: {{ model: fixed-32x400, racks: hall/R{r}, per-rack: 2, unit: 44 }}",
                $"  host-{r}: {{ model: server-2u, cards: nic-2x200, racks: hall/R{r}, per-rack: {HostsPerRack}, unit: 4 }}",
                $"  keeper-{r}: {{ model: fixed-48x1-4x10, racks: hall/R{r}, unit: 42 }}",
            })
            .Concat(Enumerable.Range(1, pods).Select(p =>
                $"  spine-{p}: {{ model: fixed-64x400, count: 8, racks: hall/S{((p - 1) / 8) + 1}/"
                + $"{(((p - 1) % 8) * 2) + 1}..{(((p - 1) % 8) * 2) + 2}, per-rack: 4, unit: 4, step: 8 }}")));

    private static string Links(int rows, int pods) => Lines(
        Enumerable.Range(1, rows).SelectMany(r => new[]
            {
                $"  edge-{r}: {{ from: host-{r}, to: leaf-{r}, pattern: same-rack, rate: 200G }}",
                $"  keep-{r}: {{ from: host-{r}, to: keeper-{r}, pattern: same-rack, rate: 1G }}",
                $"  up-{r}: {{ from: leaf-{r}, to: spine-{Math.Min(pods, ((r - 1) / 2) + 1)}, pattern: each-to-each, rate: 400G }}",
            }));

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);
}
