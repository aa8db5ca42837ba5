using System.Collections.Immutable;
using System.Numerics;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;

namespace Lanewright.Tests.Fabrics;

/// <summary>What would change the answer: every change reported is asked again just below and just above, from scratch.</summary>
public sealed class BreakEvenTests
{
    private const string Question =
        "{ hosts: { host: { count: 256, rate: 200G } }, oversubscription: '3:1', growth: 20 %, energy-price: 0.2, shapes: leaf-spine }";

    private static readonly string[] Models = ["fixed-32x400", "fixed-64x400", "fixed-64x800-dd"];

    /// <summary>A few switches of the shipped catalogue, so that asking again from scratch stays quick.</summary>
    private static readonly Lazy<(FinderContext Context, WantedFabric Wanted, ImmutableArray<BreakEven> Found)> Asking = new(() =>
    {
        var (plan, study) = Asked.Study(Asked.Question(Question));
        var items = plan.Catalogue.Items.Where(i => i is not DeviceModel { Kind: not DeviceKind.Host } || Models.Contains(i.Name));
        var context = new FinderContext(plan.Standards, new Catalogue(items), plan.Policy);
        return (context, study.Wanted, BreakEvens.Of(study.Wanted, context));
    });

    [Fact]
    public void EveryQuantity_IsAnswered() =>
        Assert.Equal(Enum.GetValues<BreakEvenQuantity>(), Asking.Value.Found.Select(b => b.Quantity));

    [Theory]
    [InlineData(BreakEvenQuantity.ModulePrice)]
    [InlineData(BreakEvenQuantity.EnergyPrice)]
    [InlineData(BreakEvenQuantity.Growth)]
    [InlineData(BreakEvenQuantity.Oversubscription)]
    [InlineData(BreakEvenQuantity.Hosts)]
    public void Change_IsOneWhenAskedAgain(BreakEvenQuantity quantity)
    {
        var breakEven = Asking.Value.Found.Single(b => b.Quantity == quantity);
        Assert.Contains(breakEven.Stretches, s => breakEven.Now >= s.From && breakEven.Now <= s.To);
        Assert.All(breakEven.Stretches, s => Assert.True(s.From <= s.To));
        foreach (var (below, above) in breakEven.Stretches.Zip(breakEven.Stretches.Skip(1)))
        {
            Assert.True(below.To <= above.From);
            if (below.IsProven && above.IsProven) Assert.NotEqual((below.Shape, below.Name), (above.Shape, above.Name));
            Assert.Equal(below.Name, NameAt(quantity, below.To, -1));
            Assert.Equal(above.Name, NameAt(quantity, above.From, 1));
        }
    }

    /// <summary>Inside a stretch that is said to be proven nothing else may win: values between are asked from scratch.</summary>
    [Theory]
    [InlineData(BreakEvenQuantity.Growth)]
    [InlineData(BreakEvenQuantity.Oversubscription)]
    [InlineData(BreakEvenQuantity.Hosts)]
    public void ProvenStretch_HasOneWinnerWhereverItIsAsked(BreakEvenQuantity quantity)
    {
        var breakEven = Asking.Value.Found.Single(b => b.Quantity == quantity);
        var parts = quantity switch
        {
            BreakEvenQuantity.Growth => 100m,
            BreakEvenQuantity.Oversubscription => 1000m,
            _ => 1m,
        };
        var proven = breakEven.Stretches.Where(s => s.IsProven && (s.To - s.From) * parts >= 2).ToList();
        Assert.NotEmpty(proven);
        var random = new Random(7);
        for (var i = 0; i < 12; i++)
        {
            var stretch = proven[random.Next(proven.Count)];
            var value = random.Next((int)(stretch.From * parts), (int)(stretch.To * parts) + 1) / parts;
            Assert.Equal((value, stretch.Name), (value, NameAt(quantity, Math.Max(value, stretch.From), 0)));
        }
    }

    /// <summary>What is drawn passes through what the answer costs now, to the rounding of prices of modules.</summary>
    [Theory]
    [InlineData(BreakEvenQuantity.ModulePrice)]
    [InlineData(BreakEvenQuantity.EnergyPrice)]
    [InlineData(BreakEvenQuantity.Growth)]
    [InlineData(BreakEvenQuantity.Oversubscription)]
    [InlineData(BreakEvenQuantity.Hosts)]
    public void Line_PassesThroughTheAnswer(BreakEvenQuantity quantity)
    {
        var (context, wanted, found) = Asking.Value;
        var breakEven = found.Single(b => b.Quantity == quantity);
        var stretch = breakEven.Stretches.First(s => breakEven.Now >= s.From && breakEven.Now <= s.To);
        (decimal Value, decimal Cost)[] points =
        [
            (stretch.From, stretch.CostFrom.Units),
            .. stretch.Between.Select(b => (b.Value, b.Cost.Units)),
            (stretch.To, stretch.CostTo.Units),
        ];
        Assert.Equal(points.Select(p => p.Value).Order(), points.Select(p => p.Value));
        var after = Math.Max(1, Array.FindIndex(points, p => p.Value >= breakEven.Now));
        var (left, right) = (points[after - 1], points[after]);
        var share = right.Value == left.Value ? 0 : (breakEven.Now - left.Value) / (right.Value - left.Value);
        var drawn = left.Cost + ((right.Cost - left.Cost) * share);
        var now = new Sizing(context).Of(wanted).Options[0].PriceOverYears.Units;
        Assert.True(Math.Abs(drawn - now) <= now * 0.0005m, $"{drawn} is drawn where the answer costs {now}");
    }

    /// <summary>Who may have less bandwidth may buy what has more: the least price never rises where the ratio gets looser. That no other
    /// option wins between two answers rests on it.</summary>
    [Theory]
    [InlineData(96, 1)]
    [InlineData(150, 0)]
    [InlineData(256, 0)]
    [InlineData(600, 0, FabricShape.ThreeTier)]
    public void LooserRatio_CostsNoMore(int hosts, int survive, FabricShape shape = FabricShape.LeafSpine)
    {
        var (context, wanted, _) = Asking.Value;
        var asked = wanted with { Hosts = [wanted.Hosts[0] with { Count = hosts }], Survive = survive, Shapes = [shape] };
        var sizing = new Sizing(context);
        var prices = Enumerable.Range(0, 60).Select(i => 1000 + (50 * i))
            .Select(parts => (parts, sizing.Of(BreakEvens.WithRatio(asked, parts)).Options))
            .Where(a => !a.Options.IsEmpty).Select(a => (a.parts, Price: a.Options[0].PriceOverYears.Units)).ToList();
        Assert.True(prices.Select(p => p.Price).Distinct().Count() > 3, "a ratio that changes nothing proves nothing");
        foreach (var (tight, loose) in prices.Zip(prices.Skip(1)))
            Assert.True(loose.Price <= tight.Price, $"{tight} and {loose}");
    }

    /// <summary>Who needs fewer hosts may buy what holds more: the least price never falls where hosts are added.</summary>
    [Theory]
    [InlineData(60, 1)]
    [InlineData(250, 0)]
    public void MoreHosts_CostNoLess(int least, int survive)
    {
        var (context, wanted, _) = Asking.Value;
        var sizing = new Sizing(context);
        var asked = wanted with { Survive = survive };
        var prices = Enumerable.Range(least, 40).Select(hosts => (hosts, sizing.Of(BreakEvens.WithHosts(asked, hosts)).Options))
            .Where(a => !a.Options.IsEmpty).Select(a => (a.hosts, Price: a.Options[0].PriceOverYears.Units)).ToList();
        Assert.True(prices.Count > 30, "too few answers to compare");
        foreach (var (fewer, more) in prices.Zip(prices.Skip(1)))
            Assert.True(fewer.Price <= more.Price, $"{fewer} and {more}");
    }

    /// <summary>Source: compound growth in whole numbers of any size, the count after each year rounded up (derived).</summary>
    [Theory]
    [InlineData(96, 4, 3000)]
    [InlineData(7, 3, 3000)]
    [InlineData(256, 5, 4000)]
    public void StepsOfGrowth_AreTheValuesThatAskForOtherHosts(int hosts, int years, int most)
    {
        var (_, wanted, _) = Asking.Value;
        var asked = wanted with { Years = years, Hosts = [wanted.Hosts[0] with { Count = hosts }] };
        var steps = GrowthSteps.Of(most, parts => BreakEvens.WithGrowth(asked, parts));
        var byHand = Enumerable.Range(0, most + 1).Select(parts => (parts, Counts: Counts(hosts, years, parts)))
            .GroupBy(p => p.Counts).Select(g => (g.First().parts, g.Last().parts)).ToList();
        Assert.Equal(byHand, Enumerable.Range(0, steps.Count).Select(s => (steps.First(s), steps.Last(s))));
        Assert.All(Enumerable.Range(0, most + 1), parts =>
            Assert.InRange(parts, steps.First(steps.At(parts)), steps.Last(steps.At(parts))));
    }

    /// <summary>Exact arithmetic: hosts times (10000 + parts)^y over 10000^y, rounded up.</summary>
    private static string Counts(int hosts, int years, int parts) => string.Join(' ', Enumerable.Range(0, years + 1).Select(y =>
        (hosts * BigInteger.Pow(10_000 + parts, y) + BigInteger.Pow(10_000, y) - 1) / BigInteger.Pow(10_000, y)));

    [Fact]
    public void Growth_IsProvenOverItsWholeRange()
    {
        var (context, wanted, _) = Asking.Value;
        var few = wanted with { Years = 4, Hosts = [wanted.Hosts[0] with { Count = 32 }] };
        var growth = BreakEvens.Of(BreakEvenQuantity.Growth, few, context, (_, _) => { });
        Assert.True(growth.IsWholeRangeProven);
        Assert.True(growth.Stretches.Length > 1, "a growth that changes nothing proves nothing");
        Assert.Equal((0m, 40m), (growth.Stretches[0].From, growth.Stretches[^1].To));
        foreach (var (below, above) in growth.Stretches.Zip(growth.Stretches.Skip(1))) Assert.Equal(below.To + 0.01m, above.From);
    }

    [Fact]
    public void Quantities_HaveChangesToHoldAgainst() =>
        Assert.True(Asking.Value.Found.Count(b => b.Stretches.Length > 1) >= 3, "a question that nothing changes proves nothing");

    /// <summary>The winner a little to one side of a value, worked out without any search.</summary>
    private static string NameAt(BreakEvenQuantity quantity, decimal value, int side)
    {
        var (context, wanted, _) = Asking.Value;
        // Module prices are rounded to hundredths, which moves a corner by a thousandth or so.
        var beside = value * (1 + (side * 0.002m));
        var answer = quantity switch
        {
            BreakEvenQuantity.ModulePrice => new Sizing(BreakEvens.WithModulePrice(context, beside)).Of(wanted),
            BreakEvenQuantity.EnergyPrice => new Sizing(context).Of(BreakEvens.WithEnergyPrice(wanted, beside)),
            BreakEvenQuantity.Growth => new Sizing(context).Of(BreakEvens.WithGrowth(wanted, (int)(value * 100))),
            BreakEvenQuantity.Hosts => new Sizing(context).Of(BreakEvens.WithHosts(wanted, (int)value)),
            _ => new Sizing(context).Of(wanted with { Oversubscription = [Near(value, side)] }),
        };
        return Words(answer);
    }

    /// <summary>A ratio a little below or above a value, in ten-thousandths.</summary>
    private static Ratio Near(decimal value, int side) => new((long)Math.Round(value * 10_000) + side, 10_000);

    private static string Words(SizingAnswer answer) => answer.Options is [var best, ..]
        ? FabricShapes.Word(best.Shape) + ", " + string.Join(" under ", best.Switches.Select(s => s.Model.Name).Distinct())
        : "";
}
