using System.Globalization;
using System.Text.Json;
using Lanewright.Tests.Load.Support;
using nietras.SeparatedValues;

namespace Lanewright.Tests.Load;

/// <summary>Every case of tests/cases/fabric-load.csv, with the source beside it there, against the engine. Fractions must be met to the
/// last places a double has, decimals to the places they are given with.</summary>
public sealed class FabricCaseTests
{
    private const double LastPlaces = 1e-12;

    public static TheoryData<string> Ids => [.. Rows().Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Case_IsMet(string id)
    {
        var row = Rows().Single(r => r.Id == id);
        using var inputs = JsonDocument.Parse(row.Inputs);
        using var expected = JsonDocument.Parse(row.Expected);
        var found = FabricCases.Answer(row.Function, inputs.RootElement);
        foreach (var value in expected.RootElement.EnumerateObject())
        {
            Assert.True(found.ContainsKey(value.Name), $"{id}: nothing computes {value.Name}");
            var (wanted, tolerance) = value.Value.ValueKind == JsonValueKind.String
                ? (Fraction(value.Value.GetString() ?? ""), LastPlaces)
                : (value.Value.GetDouble(), row.Tolerance);
            var off = Math.Abs(found[value.Name] - wanted);
            Assert.True(off <= tolerance, $"{id} {value.Name}: {found[value.Name]:R} instead of {wanted:R}");
        }
    }

    [Fact]
    public void Cases_AreAllThere() => Assert.True(Rows().Count >= 37, "the table of cases has lost rows");

    private static List<(string Id, string Function, string Inputs, string Expected, double Tolerance)> Rows()
    {
        var path = Repository.Path("tests", "cases", "fabric-load.csv");
        using var reader = Sep.New(',').Reader(o => o with { Unescape = true }).FromFile(path);
        var rows = new List<(string, string, string, string, double)>();
        foreach (var row in reader)
        {
            var isStated = double.TryParse(row["tolerance"].ToString(), CultureInfo.InvariantCulture, out var stated);
            var tolerance = isStated ? stated : LastPlaces;
            rows.Add((row["id"].ToString(), row["function"].ToString(), row["inputs"].ToString(), row["expected"].ToString(), tolerance));
        }
        return rows;
    }

    private static double Fraction(string text)
    {
        var parts = text.Split('/');
        var above = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? above : above / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
