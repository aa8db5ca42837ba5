using System.Globalization;
using Lanewright.Engineering.Space;
using Lanewright.Standards;

namespace Lanewright.Tests.Space;

/// <summary>Aisles between rows, and the unit racks are measured in.</summary>
public sealed class AisleTests
{
    private const double Foot = 0.3048;

    // Source: EIA-310, distances of holes in a rack unit (seen).
    [Fact]
    public void Unit_IsThreeDistancesOfHoles() =>
        Assert.Equal(15.875 + 15.875 + 12.7, StandardsLibrary.Shipped.Practice("rack", "unit").Value, 0.0005);

    // Source: article on rack layout, a pitch of seven tiles of two feet (seen): aisles of 4 and 3 ft and racks of 42 in; and its rule in
    // metres (derived). Three rows one behind the other have both aisles between them, and the pitch from the first to the third.
    [Theory]
    [InlineData(4 * Foot, 3 * Foot, 3.5 * Foot, 14 * Foot)]
    [InlineData(1.2, 0.9, 1.2, 4.5)]
    public void Pitch_IsTwoAislesAndTwoRacks(double cold, double hot, double depth, double pitch)
    {
        var aisles = Aisles(depth, 0, cold + depth, cold + hot + (2 * depth));
        Assert.Equal(2, aisles.Count);
        Assert.Equal(cold, aisles[0].Clear.Metres, 1e-6);
        Assert.Equal(hot, aisles[1].Clear.Metres, 1e-6);
        Assert.Equal(pitch, aisles.Sum(a => a.Clear.Metres) + (2 * depth), 0.001);
    }

    // Rows beside one another have no aisle between them, and rows back to back none either.
    [Fact]
    public void Rows_BesideOneAnotherHaveNoAisle()
    {
        Assert.Empty(Aisles(1.2, 0, 1.2));
        var beside = PlanBlock.Compile("""
            lanewright: 1
            sites: { s: { halls: { h: { rows: { A: { racks: 2 }, B: { racks: 2, x: 5 m, y: 1.5 m } } } } } }
            """);
        Assert.Empty(Aisle.Of(beside.Plan!));
    }

    private static List<Aisle> Aisles(double depth, params double[] fronts)
    {
        var rows = string.Join(", ", fronts.Select((y, i) => $"R{i}: {{ racks: 3, y: {Text(y)} m }}"));
        return [.. Aisle.Of(PlanBlock.Compile($$"""
            lanewright: 1
            racks: { standard: { depth: {{Text(depth)}} m } }
            sites: { s: { halls: { h: { rows: { {{rows}} } } } } }
            """).Plan!)];

        static string Text(double metres) => metres.ToString("0.######", CultureInfo.InvariantCulture);
    }
}
