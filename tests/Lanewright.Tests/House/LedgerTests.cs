using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Tests.House;

/// <summary>Codes are never reused: the ledger remembers every one that was ever given.</summary>
public sealed class LedgerTests
{
    [Fact]
    public void Codes_AreUnique()
    {
        Assert.Equal(RuleBook.Kinds.Length, RuleBook.Kinds.Select(k => k.Code).Distinct().Count());
        Assert.Equal(RuleBook.Kinds.Length, RuleBook.Kinds.Select(k => k.Name).Distinct().Count());
    }

    [Fact]
    public void Ledger_HoldsEveryKindUnderItsCode()
    {
        var ledger = File.ReadLines(Repository.Path("docs", "codes.csv"))
            .Skip(1)
            .Select(l => l.Split(','))
            .ToDictionary(l => l[0], l => (Name: l[1], State: l[2]));
        var inUse = ledger.Where(l => l.Value.State == "in use").ToDictionary(l => l.Key, l => l.Value.Name);
        Assert.Equal(RuleBook.Kinds.Select(k => $"{k.Code} {k.Name}").Order(), inUse.Select(l => $"{l.Key} {l.Value}").Order());
    }

    [Fact]
    public void Rules_AreAtLeastThirtyFive() => Assert.True(RuleBook.All.Length >= 35);

    [Fact]
    public void EveryRuleClass_IsInTheBook()
    {
        var classes = typeof(Rule).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Rule)) && !t.IsAbstract).Select(t => t.Name);
        Assert.Equal(classes.Order(), RuleBook.All.Select(r => r.GetType().Name).Order());
    }

    [Fact]
    public void Severities_AreWordsPeopleKnow() =>
        Assert.Equal(["Advice", "Warning", "Error"], Enum.GetNames<Severity>());
}
