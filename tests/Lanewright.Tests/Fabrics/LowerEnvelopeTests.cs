using CsCheck;
using Lanewright.Engineering.Fabrics;

namespace Lanewright.Tests.Fabrics;

/// <summary>The chain of cheapest answers over a price, found by solving at crossings only.</summary>
public sealed class LowerEnvelopeTests
{
    private static readonly Gen<CostLine[]> Lines =
        Gen.Select(Gen.Int[0, 500], Gen.Int[0, 60], (a, b) => new CostLine(a, b)).Array[1, 9];

    [Fact]
    public void Chain_IsTheLeastOfAllLinesEverywhere() => Lines.Sample(lines =>
    {
        var chain = LowerEnvelope.Of(0m, 20m, Solve(lines));
        Assert.Equal(0m, chain[0].From);
        Assert.Equal(20m, chain[^1].To);
        for (var i = 1; i < chain.Length; i++) Assert.Equal(chain[i - 1].To, chain[i].From);
        for (var price = 0m; price <= 20m; price += 0.125m)
        {
            var piece = chain.First(p => price >= p.From && price <= p.To);
            Assert.Equal(lines.Min(l => l.At(price)), piece.Line.At(price), 9);
        }
    });

    [Fact]
    public void Corner_IsWhereTheAnswerChanges() => Lines.Sample(lines =>
    {
        var chain = LowerEnvelope.Of(0m, 20m, Solve(lines));
        foreach (var (before, after) in chain.Zip(chain.Skip(1)).Where(p => p.First.To is > 0.01m and < 19.99m))
        {
            const decimal little = 0.0001m;
            Assert.Equal(lines.Min(l => l.At(before.To - little)), before.Line.At(before.To - little), 9);
            Assert.Equal(lines.Min(l => l.At(before.To + little)), after.Line.At(before.To + little), 9);
            Assert.True(before.Line.At(before.To + little) > after.Line.At(before.To + little));
        }
    });

    private static Func<decimal, (CostLine, int)> Solve(CostLine[] lines) => price =>
    {
        var best = Enumerable.Range(0, lines.Length).MinBy(i => (lines[i].At(price), i));
        return (lines[best], best);
    };
}
