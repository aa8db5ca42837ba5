using Lanewright.Rules;

namespace Lanewright.Tests.Choice;

/// <summary>Stock is used first, counted as it is used up, and never makes a link dearer.</summary>
public sealed class StockTests
{
    [Fact]
    public void OneModuleOnTheShelf_PaysForOneEndOnly()
    {
        var judged = Compile(
            "rate: 100G, length: 1 m, count: 4", "{ model: m-100g-er4, quantity: 1 }, { model: dac-100, length: 1 m, quantity: 8 }");
        Assert.Equal(0m, judged.Parts.Sum(p => p.Item.Name.StartsWith("fixed", StringComparison.Ordinal) ? 0 : p.Total.Units));
        Assert.DoesNotContain(judged.Parts, p => p.Item.Name == "m-100g-er4");
    }

    [Theory]
    [InlineData(4, 2, 0)] // two pairs for two links
    [InlineData(3, 2, 1)] // one pair, and one more for the second
    [InlineData(2, 1, 0)]
    public void ModulesAtBothEnds_AreCountedTwice(int onHand, int links, int bought)
    {
        var judged = Compile(
            $"rate: 100G, length: 40 m, count: {links}, type: 100GBASE-LR4", $"{{ model: m-100g-lr4, quantity: {onHand} }}");
        var line = judged.Parts.Single(p => p.Item.Name == "m-100g-lr4");
        Assert.Equal((2L * links, (long)bought), (line.Needed, line.ToBuy));
    }

    [Fact]
    public void LongerCableInStock_IsUsedBeforeAShorterOneIsBought()
    {
        var judged = Placed("{ model: dac-100-thick, length: 3 m, quantity: 2 }");
        Assert.Equal(2, judged.Parts.Single(p => p.Item.Name == "dac-100-thick" && p.Length?.Metres == 3).FromStock);
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code == "LW2801");
    }

    [Fact]
    public void CoilNobodyCanStow_StaysOnTheShelf()
    {
        var judged = Placed("{ model: aoc-100, length: 30 m, quantity: 2 }");
        Assert.DoesNotContain(judged.Parts, p => p.Length?.Metres == 30);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW2801");
    }

    [Fact]
    public void WhatIsDearer_SaysThatStockDecided()
    {
        var judged = Compile("rate: 100G, length: 1 m, count: 1", "{ model: aoc-100, length: 1 m, quantity: 1 }");
        var choice = judged.Design!.Choices.Single();
        Assert.Equal("aoc-100", choice.Chosen!.Cable.Name);
        var lost = choice.Candidates.First(c => c.Cable.Name == "dac-100");
        Assert.Contains("in stock", Lanewright.Engineering.Choice.LostBy.Reason(lost, choice.Winner, "CU"), StringComparison.Ordinal);
    }

    /// <summary>Stock on hand never makes a plan dearer: the same plan by random stock, seeds printed by the runner.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Stock_NeverMakesAPlanDearer(int seed)
    {
        var random = new Random(seed);
        string[] models = ["m-100g-lr4", "m-100g-cwdm4", "m-100g-sr4", "m-100g-er4"];
        var stock = string.Join(", ", models.Select(m => $"{{ model: {m}, quantity: {random.Next(9)} }}"));
        const string links = "rate: 100G, length: 60 m, count: 5";
        Assert.True(Bought(Compile(links, stock)) <= Bought(Compile(links, "")), stock);
    }

    private static decimal Bought(JudgedPlan judged) => judged.Parts.Sum(p => p.Total.Units);

    private static JudgedPlan Compile(string link, string stock) => PlanBlock.Compile($$"""
        lanewright: 1
        devices: { a: { model: fixed-32x100 }, b: { model: fixed-32x100 } }
        links: { up: { from: a, to: b, {{link}} } }
        stock: [ {{stock}} ]
        """);

    private static JudgedPlan Placed(string stock) => PlanBlock.Compile($$"""
        lanewright: 1
        sites: { s: { halls: { h: { rows: { A: { racks: 1 } } } } } }
        devices: { a: { model: fixed-32x100, racks: h/A/1, unit: 46 }, b: { model: fixed-32x100, racks: h/A/1, unit: 10 } }
        links: { up: { from: a, to: b, rate: 100G, count: 2 } }
        stock: [ {{stock}} ]
        """);
}
