using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Tests.Pages;

/// <summary>The page is the test: every example raises its code, every put-right does not.</summary>
public sealed class PageTests
{
    public static TheoryData<string> Names => new(RuleBook.Kinds.Select(k => k.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HasAllHeadingsInOrder(string name)
    {
        var page = PageOf(name);
        Assert.StartsWith($"# {page.Kind.Code} {SpacedName(name)}\n", page.Text, StringComparison.Ordinal);
        var at = -1;
        foreach (var heading in RulePage.Headings)
        {
            var next = page.Text.IndexOf($"\n## {heading}\n", StringComparison.Ordinal);
            Assert.True(next > at, $"{name}: heading '{heading}' is missing or out of order");
            Assert.True(page.Section(heading).Length > 20, $"{name}: nothing stands under '{heading}'");
            at = next;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_EveryExampleRaisesItsCode(string name)
    {
        var page = PageOf(name);
        var examples = page.Plans("Example");
        Assert.NotEmpty(examples);
        foreach (var example in examples)
        {
            var judged = PlanBlock.Compile(example);
            Assert.True(
                judged.Findings.Any(f => f.Kind.Code == page.Kind.Code),
                $"{name}: the example does not raise it:\n{example}\n{Expect.Text(judged)}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_EveryPutRightIsFreeOfItAndOfErrors(string name)
    {
        var page = PageOf(name);
        var cures = page.Plans("Put right");
        Assert.NotEmpty(cures);
        foreach (var cure in cures)
        {
            var judged = PlanBlock.Compile(cure);
            Assert.True(
                judged.Findings.All(f => f.Kind.Code != page.Kind.Code && f.Severity != Severity.Error),
                $"{name}: the cure is not clean:\n{cure}\n{Expect.Text(judged)}");
        }
    }

    [Fact]
    public void EmbeddedPages_AreExactlyThoseOfTheKinds()
    {
        var pages = Lanewright.Text.EmbeddedText.Names("rules/")
            .Select(n => n["rules/".Length..^".md".Length])
            .Order(StringComparer.Ordinal);
        Assert.Equal(RuleBook.Kinds.Select(k => k.Name).Order(StringComparer.Ordinal), pages);
    }

    private static RulePage PageOf(string name) => RulePage.Find(name) ?? throw new InvalidOperationException($"{name} has no page");

    /// <summary>LossBudgetExceeded is headed 'Loss budget exceeded'.</summary>
    private static string SpacedName(string name) =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? " " + char.ToLowerInvariant(c) : c.ToString()));
}
