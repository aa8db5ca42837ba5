using System.Globalization;
using System.Text.Json;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>Published and independently reckoned figures, a row each with its source: tests/cases/line-physics.csv.</summary>
public sealed class LineCaseTests
{
    private static readonly List<MapNode> Rows = Read();

    /// <summary>The worst of the notes' table, which is one channel alone: 20.75 dB instead of 20.14, 17.20 and 15.61; and what the closed
    /// form of the notes is short of where a span of 80 km ends, 0.15 dB by the integral.</summary>
    private static readonly (string Symbols, double Decibels)[] MostAbove = [("gauss", 0.77), ("16qam", 3.71), ("qpsk", 5.3)];

    public static TheoryData<int> Cases => new(Enumerable.Range(0, Rows.Count));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_ComesOutAsItsSourceSays(int index)
    {
        var row = Rows[index];
        var function = row.Text("function")!;
        using var inputs = JsonDocument.Parse(row.Text("inputs")!);
        var actual = LineCaseFunctions.Of(function, [.. inputs.RootElement.EnumerateArray()]);
        if (row.Text("expected") == "None")
        {
            Assert.Null(actual);
            return;
        }
        var expected = Number(row.Text("expected")!);
        if (function == "ssfm_eta")
        {
            // Simulated, not to be repeated: the model may not lie below. How far above it lies is told by the reference notes: 0.6 dB for
            // Gaussian symbols, and for others what their own channel's part, which is never scaled, makes too much.
            var above = MostAbove.Single(m => row.Text("inputs")!.Contains(m.Symbols, StringComparison.Ordinal)).Decibels;
            Assert.InRange(actual ?? double.NaN, expected, expected + above);
            return;
        }
        var tolerance = row.Text("tolerance") is { } given ? Number(given) : 0;
        Assert.True(actual is { } value && Math.Abs(value - expected) <= tolerance + (Math.Abs(expected) * 1e-9),
            $"{function} {row.Text("inputs")}: {actual} instead of {expected} +- {tolerance} ({row.Text("source")})");
    }

    [Fact]
    public void Cases_AreManyAndHaveSources()
    {
        Assert.True(Rows.Count >= 152, $"{Rows.Count}");
        Assert.All(Rows, r => Assert.False(string.IsNullOrWhiteSpace(r.Text("source"))));
        Assert.Equal(Rows.Count, Rows.Select(r => r.Text("case")).Distinct().Count());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static List<MapNode> Read()
    {
        var path = Repository.Path("tests", "cases", "line-physics.csv");
        return [.. CsvTree.Read(new SourceText(path, File.ReadAllText(path)), new FindingSink())];
    }
}
