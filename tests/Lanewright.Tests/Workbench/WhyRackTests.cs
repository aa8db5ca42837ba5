namespace Lanewright.Tests.Workbench;

/// <summary>What is not known of a device is not nothing.</summary>
public sealed class WhyRackTests
{
    // 100 kg and 100 W are stated of one device of the two; of the other, and of the rack, nothing is.
    [Fact]
    public async Task SumsWithUnknownParts_AreLowerBounds()
    {
        await using var plan = await OpenedPlan.OfFiles(
            ("plan.yaml", """
                lanewright: 1
                catalogue: [own.yaml]
                sites: { main: { halls: { hall: { rows: { A: { racks: 1 } } } } } }
                devices:
                  known: { model: known, racks: hall/A/1, unit: 2 }
                  other: { model: unstated, racks: hall/A/1, unit: 4 }
                """),
            ("own.yaml", """
                devices:
                  known: { kind: host, title: Stated, weight: 100 kg, typical: 80 W, maximum: 100 W }
                  unstated: { kind: host, title: Not stated }
                """));
        var (_, page) = await plan.Ready("why/rack/main/hall/A/01");
        Assert.Contains("100.0 W at most of those whose power is known", page, StringComparison.Ordinal);
        Assert.Contains("at least 100.0", page, StringComparison.Ordinal);
        Assert.Contains("at least 341 BTU/h", page, StringComparison.Ordinal);
        Assert.Contains("not known", page, StringComparison.Ordinal);
    }
}
