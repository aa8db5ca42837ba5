using System.Collections.Immutable;
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

    private static readonly Lazy<(Sizing Sizing, WantedFabric Wanted)> Asking = new(() =>
    {
        var (plan, study) = Asked.Study(Asked.Question("{ hosts: { host: { count: 200, rate: 200G } }, oversubscription: '2:1' }"));
        var items = plan.Catalogue.Items.Where(i => i is not DeviceModel { Kind: not DeviceKind.Host } || Models.Contains(i.Name));
        return (new Sizing(new FinderContext(plan.Standards, new Catalogue(items), plan.Policy)), study.Wanted);
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
        var wishes = WishList.Of(wanted);
        var impossible = Enumerable.Range(0, 1 << wishes.Length)
            .Where(s => Solve(WishList.Only(wanted, k => wishes.Select((w, i) => (w, i)).Any(w => w.w.Key == k && (s & (1 << w.i)) != 0)))
                .IsEmpty)
            .ToHashSet();
        var minimal = impossible.Where(s =>
            Enumerable.Range(0, wishes.Length).All(m => (s & (1 << m)) == 0 || !impossible.Contains(s & ~(1 << m))));
        var found = Conflicts.Of(wanted, Solve);
        Assert.NotEmpty(found);
        Assert.Equal(
            minimal.Select(s => string.Join(' ', wishes.Where((_, i) => (s & (1 << i)) != 0).Select(w => w.Key))).Order(),
            found.Select(set => string.Join(' ', set.Select(w => w.Key))).Order());
    }

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
