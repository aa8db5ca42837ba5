using Lanewright.Workbench.Desk;

namespace Lanewright.Tests.Workbench;

/// <summary>Which lines of two texts differ.</summary>
public sealed class LineChangeTests
{
    [Theory]
    [InlineData("a b c", "a b c", "")]
    [InlineData("a b c", "a x c", "2b>2x")]
    [InlineData("a b c", "a c", "2b>0")]
    [InlineData("a c", "a b c", "0>2b")]
    [InlineData("a b c d e", "a x c d y", "2b>2x 5e>5y")]
    [InlineData("a b c", "c a b", "0>1c 3c>0")]
    [InlineData("", "a", "1>1a")]
    public void Changes_AreAsFewAsCanBe(string before, string after, string changes) => Assert.Equal(changes, string.Join(' ',
        LineChanges.Of(before.Replace(' ', '\n'), after.Replace(' ', '\n')).Select(c => Side(c.OldNumber, c.OldText) + ">"
            + Side(c.NewNumber, c.NewText))));

    /// <summary>Taking what is gone out of the one text and putting what is new in gives the other, for any two.</summary>
    [Fact]
    public void Changes_LeadFromOneTextToTheOther()
    {
        const int seed = 20261128;
        var random = new Random(seed);
        for (var round = 0; round < 300; round++)
        {
            var (before, after) = (Text(random), Text(random));
            var changes = LineChanges.Of(before, after);
            var gone = changes.Where(c => c.OldNumber > 0).Select(c => c.OldNumber).ToHashSet();
            var come = changes.Where(c => c.NewNumber > 0).ToDictionary(c => c.NewNumber, c => c.NewText);
            var kept = new Queue<string>(before.Split('\n').Where((_, i) => !gone.Contains(i + 1)));
            var made = Enumerable.Range(1, after.Split('\n').Length).Select(n => come.TryGetValue(n, out var line) ? line : kept.Dequeue());
            Assert.True(after == string.Join('\n', made) && kept.Count == 0, $"seed {seed}, round {round}");
        }
    }

    private static string Text(Random random) =>
        string.Join('\n', Enumerable.Range(0, random.Next(1, 12)).Select(_ => (char)('a' + random.Next(4))));

    private static string Side(int number, string text) => number > 0 ? $"{number}{text}" : "0";
}
