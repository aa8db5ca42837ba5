using System.Globalization;
using System.Text.Json;
using Lanewright.Tests.Fabrics.Support;
using nietras.SeparatedValues;

namespace Lanewright.Tests.Fabrics;

/// <summary>Every case of tests/cases/fabric-sizing.csv, with the source and the mark beside it there, against the counts.</summary>
public sealed class SizingCaseTests
{
    private const double LastPlaces = 1e-9;

    public static TheoryData<string> Ids => [.. Rows().Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Case_IsMet(string id)
    {
        var row = Rows().Single(r => r.Id == id);
        using var inputs = JsonDocument.Parse(row.Inputs);
        using var expected = JsonDocument.Parse(row.Expected);
        var found = SizingCases.Answer(row.Function, inputs.RootElement);
        Assert.NotEmpty(expected.RootElement.EnumerateObject());
        foreach (var value in expected.RootElement.EnumerateObject())
        {
            Assert.True(found.ContainsKey(value.Name), $"{id}: nothing computes {value.Name}");
            var wanted = Values(value.Value);
            Assert.Equal(wanted.Length, found[value.Name].Length);
            for (var i = 0; i < wanted.Length; i++)
                Assert.True(Math.Abs(found[value.Name][i] - wanted[i]) <= row.Tolerance,
                    $"{id} {value.Name}: {found[value.Name][i]:R} instead of {wanted[i]:R}");
        }
    }

    [Fact]
    public void Cases_AreAllThere() => Assert.Equal(45, Rows().Count);

    private static double[] Values(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Array => [.. value.EnumerateArray().Select(v => v.GetDouble())],
        JsonValueKind.True => [1],
        JsonValueKind.False => [0],
        JsonValueKind.String => [double.Parse(value.GetString() ?? "", CultureInfo.InvariantCulture)],
        _ => [value.GetDouble()],
    };

    private static List<(string Id, string Function, string Inputs, string Expected, double Tolerance)> Rows()
    {
        using var reader = Sep.New(',').Reader(o => o with { Unescape = true })
            .FromFile(Repository.Path("tests", "cases", "fabric-sizing.csv"));
        var rows = new List<(string, string, string, string, double)>();
        foreach (var row in reader)
        {
            var isStated = double.TryParse(row["tolerance"].ToString(), CultureInfo.InvariantCulture, out var stated);
            rows.Add((row["id"].ToString(), row["function"].ToString(), row["inputs"].ToString(), row["expected"].ToString(),
                isStated ? stated : LastPlaces));
        }
        return rows;
    }
}
