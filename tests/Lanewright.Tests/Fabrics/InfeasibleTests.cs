using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Fabrics;

/// <summary>Questions that nothing fits, asked of the engine: every subset of the wishes is asked, and limits on both sides.</summary>
public sealed class InfeasibleTests
{
    private static readonly string[] Models = ["fixed-32x400", "fixed-64x400"];

    private static readonly Lazy<(Sizing Sizing, WantedFabric Wanted, FinderContext Context)> Asking = new(() =>
    {
        var (plan, study) = Asked.Study(Asked.Question("{ hosts: { host: { count: 200, rate: 200G } }, oversubscription: '2:1' }"));
        var items = plan.Catalogue.Items.Where(i => i is not DeviceModel { Kind: not DeviceKind.Host } || Models.Contains(i.Name));
        var context = new FinderContext(plan.Standards, new Catalogue(items), plan.Policy);
        return (new Sizing(context), study.Wanted, context);
    });

    /// <summary>Limits drawn at random, each of them stated or not.</summary>
    private static readonly Gen<WantedFabric> Drawn = Gen.Select(
        Gen.Int[20, 300], Gen.Int[200, 900], Gen.Int[5, 20], Gen.Int[1, 12], Gen.Int[0, 2], Gen.Int[1, 31],
        (hosts, watts, kilograms, units, survive, limits) =>
        {
            bool Has(int limit) => (limits & (1 << limit)) != 0;
            return BreakEvens.WithHosts(Asking.Value.Wanted, hosts) with
            {
                RackPower = Has(0) ? Watts.From(watts) : null,
                RackWeight = Has(1) ? Mass.FromKilograms(kilograms) : null,
                RackUnits = Has(2) ? units : null,
                MostTiers = Has(3) ? 1 : null,
                Survive = Has(4) ? survive : 0,
            };
        });

    /// <summary>Limits that bind in different ways, from one that is far out of reach to several that only clash together.</summary>
    public static TheoryData<int, int, int, string> Limits => new()
    {
        { 5, 200_000, 2, "" },
        { 9, 90_000, 2, "" },
        { 6, 120_000, 1, "" },
        { 8, 150_000, 3, "OSFP" },
    };

    [Theory]
    [MemberData(nameof(Limits))]
    public void Conflicts_AreThoseThatAskingEverySubsetFinds(int units, int budget, int tiers, string form)
    {
        var wanted = With(units, budget, tiers, form);
        var found = Conflicts.Of(wanted, Solve);
        Assert.NotEmpty(found);
        Assert.Equal(MinimalSets(wanted), Words(found));
    }

    /// <summary>What a study tells is found with less effort than what is asked subset by subset; all sets have to be there, or it has to
    /// say that a search was broken off, and then those it tells are still minimal.</summary>
    [Fact]
    public void Study_TellsEveryMinimalSet() => Drawn.Sample(
        wanted =>
        {
            var study = FabricStudy.Of(wanted, Asking.Value.Context);
            if (!study.Answer.Options.IsEmpty) return;
            if (study.AreConflictsProven) Assert.Equal(MinimalSets(wanted), Words(study.Conflicts));
            else Assert.Subset(MinimalSets(wanted).ToHashSet(), Words(study.Conflicts).ToHashSet());
        },
        iter: 12);

    [Fact]
    public void ToldRelaxation_IsFoundAndNothingTighter() => Drawn.Sample(
        wanted =>
        {
            var study = FabricStudy.Of(wanted, Asking.Value.Context);
            foreach (var told in study.Relaxations)
            {
                if (told.Figures?.Possible is not { } possible) continue;
                Assert.NotEmpty(Solve(Moved(wanted, told.Wish.Key, possible, 0)));
                if (study.IsProven) Assert.Empty(Solve(Moved(wanted, told.Wish.Key, possible, 1)));
            }
        },
        iter: 20);

    [Theory]
    [InlineData(5, 200_000, 2, "")]
    [InlineData(9, 90_000, 2, "")]
    public void Relaxations_HoldOnBothSides(int units, int budget, int tiers, string form)
    {
        var wanted = With(units, budget, tiers, form);
        var found = new Relaxations(wanted, Conflicts.Of(wanted, Solve), Solve).All().ToDictionary(r => r.Wish.Key, r => r.Possible);
        Assert.Contains(found.Values, v => v is not null);
        if (Whole(found["rack-units"]) is { } least)
            Border(wanted with { RackUnits = least }, wanted with { RackUnits = least - 1 });
        if (Whole(found["budget"]) is { } hundredths)
        {
            Border(wanted with { Budget = Money.FromHundredths(hundredths) },
                wanted with { Budget = Money.FromHundredths(hundredths - 1) });
        }
        if (Whole(found["hosts"]) is { } most)
            Border(BreakEvens.WithHosts(wanted, most), BreakEvens.WithHosts(wanted, most + 1));
    }

    /// <summary>What is wanted with another limit, and by so many steps tighter.</summary>
    private static WantedFabric Moved(WantedFabric wanted, string key, decimal limit, int steps) => key switch
    {
        "rack-units" => wanted with { RackUnits = (int)limit - steps },
        "rack-power" => wanted with { RackPower = Watts.From((double)(limit - (steps * 0.01m))) },
        "rack-weight" => wanted with { RackWeight = Mass.FromKilograms((double)(limit - (steps * 0.01m))) },
        "tiers" => wanted with { MostTiers = (int)limit - steps },
        "survive" => wanted with { Survive = (int)limit + steps },
        "hosts" => BreakEvens.WithHosts(wanted, (int)limit + steps),
        "oversubscription" => wanted with
        {
            Oversubscription = [new Ratio((long)Math.Ceiling((limit - (steps * 0.0001m)) * 1_000_000), 1_000_000)],
        },
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "a wish without a figure"),
    };

    /// <summary>The minimal sets that asking every subset by itself finds.</summary>
    private static IEnumerable<string> MinimalSets(WantedFabric wanted)
    {
        var wishes = WishList.Of(wanted);
        var impossible = Enumerable.Range(0, 1 << wishes.Length)
            .Where(s => Solve(WishList.Only(wanted, k => wishes.Select((w, i) => (w, i)).Any(w => w.w.Key == k && (s & (1 << w.i)) != 0)))
                .IsEmpty)
            .ToHashSet();
        return impossible
            .Where(s => Enumerable.Range(0, wishes.Length).All(m => (s & (1 << m)) == 0 || !impossible.Contains(s & ~(1 << m))))
            .Select(s => string.Join(' ', wishes.Where((_, i) => (s & (1 << i)) != 0).Select(w => w.Key)))
            .Order();
    }

    private static IEnumerable<string> Words(ImmutableArray<ImmutableArray<Wish>> sets) =>
        sets.Select(set => string.Join(' ', set.Select(w => w.Key))).Order();

    private static void Border(WantedFabric possible, WantedFabric beyond)
    {
        Assert.NotEmpty(Solve(possible));
        Assert.Empty(Solve(beyond));
    }

    /// <summary>The digits of a possible value, whatever groups and points are between them.</summary>
    private static int? Whole(string? value) =>
        value is null ? null : int.Parse(string.Concat(value.Where(char.IsAsciiDigit)), System.Globalization.CultureInfo.InvariantCulture);

    private static WantedFabric With(int units, int budget, int tiers, string form) => Asking.Value.Wanted with
    {
        RackUnits = units,
        Budget = Money.FromUnits(budget),
        MostTiers = tiers,
        FormFactors = form.Length == 0 ? [] : [form],
    };

    private static ImmutableArray<FabricNeeds> Solve(WantedFabric wanted) =>
        [.. Asking.Value.Sizing.Of(wanted).Options.Select(o => o.Needs)];
}
