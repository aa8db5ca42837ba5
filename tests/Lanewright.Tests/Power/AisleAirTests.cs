using Lanewright.Engineering.Heat;

namespace Lanewright.Tests.Power;

/// <summary>Which row breathes what another blows out.</summary>
public sealed class AisleAirTests
{
    // By hand, against the trade's order of cold and hot aisles (common practice): fronts to fronts and backs to backs keep air apart, a
    // front to a back does not; where the devices of one row breathe the other way round, it is the reverse.
    [Theory]
    [InlineData("far", "near", "server-2u", false)]
    [InlineData("near", "far", "server-2u", false)]
    [InlineData("near", "near", "server-2u", true)]
    [InlineData("far", "far", "server-2u", true)]
    [InlineData("near", "near", "reversed", false)]
    [InlineData("far", "near", "reversed", true)]
    public void RowsMixAir_WhereOneBlowsAtTheInletsOfTheOther(string first, string second, string model, bool isMixed)
    {
        var air = Assert.Single(Air($", fronts: {first}", $", fronts: {second}", model));
        Assert.Equal(isMixed, air.IsMixed);
        Assert.False(air.IsOpen);
    }

    [Theory]
    [InlineData("", ", fronts: near")]
    [InlineData(", fronts: near", "")]
    public void FrontsThatAreNotStated_LeaveItOpen(string first, string second)
    {
        var air = Assert.Single(Air(first, second, "server-2u"));
        Assert.True(air.IsOpen);
        Assert.False(air.IsMixed);
    }

    // Panels move no air.
    [Fact]
    public void ARowOfPanels_IsNoConcern() => Assert.Empty(Air(", fronts: near", ", fronts: near", "panel-1u-12"));

    private static System.Collections.Immutable.ImmutableArray<AisleAir> Air(string first, string second, string model) =>
        AisleAir.Of(Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            catalogue: [own.yaml]
            sites: { main: { halls: { hall: { rows: { A: { racks: 2{{first}} }, B: { racks: 2, y: 3.6 m{{second}} } } } } } }
            devices:
              host: { model: server-2u, racks: hall/A/1, unit: 2 }
              other: { model: {{model}}, racks: hall/B/1, unit: 2 }
            # file: own.yaml
            devices:
              reversed: { kind: host, title: Breathes at its back, airflow: back-to-front, maximum: 100 W }
            """)).Racks.Value);
}
