using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds what would change the answer, one quantity at a time, everything else as asked. Against a price the least cost is a
/// chain of straight lines, and its corners are found exactly; against growth, ratio and hosts it goes in steps.</summary>
public sealed class BreakEvens
{
    private const decimal LeastModulePrice = 0.25m;
    private const int RatioParts = 1000;
    private const int GrowthParts = 10_000;
    private const int WidestGrowth = 5000;

    private readonly WantedFabric wanted;
    private readonly FinderContext context;
    private readonly FocusedSizing sizing;
    private double gap;

    private BreakEvens(WantedFabric wanted, FinderContext context)
    {
        this.wanted = wanted;
        this.context = context;
        sizing = new FocusedSizing(context);
    }

    /// <summary>One answer a quantity.</summary>
    /// <param name="wanted">What is asked; something fits it.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="step">Told of each quantity before it is worked out; null when nobody waits.</param>
    public static ImmutableArray<BreakEven> Of(WantedFabric wanted, FinderContext context, Action<BreakEvenQuantity>? step = null)
    {
        var search = new BreakEvens(wanted, context);
        var found = ImmutableArray.CreateBuilder<BreakEven>();
        foreach (var quantity in Enum.GetValues<BreakEvenQuantity>())
        {
            step?.Invoke(quantity);
            search.gap = 0;
            var answer = search.Of(quantity);
            found.Add(answer with { Gap = Share.From(Math.Max(search.gap, search.sizing.TakeGap())) });
        }
        return found.ToImmutable();
    }

    private BreakEven Of(BreakEvenQuantity quantity) => quantity switch
    {
        BreakEvenQuantity.ModulePrice => ModulePrice(),
        BreakEvenQuantity.EnergyPrice => EnergyPrice(),
        BreakEvenQuantity.Growth => Growth(),
        BreakEvenQuantity.Oversubscription => Oversubscription(),
        _ => Hosts(),
    };

    /// <summary>The question with the energy at a price.</summary>
    public static WantedFabric WithEnergyPrice(WantedFabric wanted, decimal perKilowattHour) =>
        wanted with { EnergyPrice = Quantities.EnergyPrice.FromPerKilowattHour(perKilowattHour) };

    /// <summary>The context with all modules at a multiple of their prices.</summary>
    public static FinderContext WithModulePrice(FinderContext context, decimal times) => context with
    {
        Catalogue = context.Catalogue.With(
            context.Catalogue.Modules.Select(m => m with { Price = Money.FromHundredths(m.Price.Hundredths * times) }), []),
    };

    /// <summary>The question with another growth.</summary>
    /// <param name="wanted">The question.</param>
    /// <param name="parts">Growth a year in hundredths of a per cent.</param>
    public static WantedFabric WithGrowth(WantedFabric wanted, int parts) =>
        wanted with { Growth = Share.From((double)parts / GrowthParts) };

    /// <summary>The question with another number of hosts, all kinds in proportion.</summary>
    public static WantedFabric WithHosts(WantedFabric wanted, int hosts) => wanted with { Hosts = HostShares.Of(wanted.Hosts, hosts) };

    /// <summary>The question with another ratio at the leaves, tiers above in proportion.</summary>
    /// <param name="wanted">The question.</param>
    /// <param name="parts">The ratio in thousandths to one.</param>
    public static WantedFabric WithRatio(WantedFabric wanted, int parts)
    {
        var leaves = wanted.OversubscriptionOf(0);
        var times = new Ratio(parts * leaves.Denominator, RatioParts * leaves.Numerator).Reduced;
        var tiers = Math.Max(1, wanted.Oversubscription.Length);
        return wanted with { Oversubscription = [.. Enumerable.Range(0, tiers).Select(t => wanted.OversubscriptionOf(t) * times)] };
    }

    private BreakEven ModulePrice() => new(BreakEvenQuantity.ModulePrice, 1,
        Stretches(LowerEnvelope.Of(LeastModulePrice, 4, times =>
        {
            var winner = Winner.Of(new Sizing(WithModulePrice(context, times)).Of(wanted));
            gap = Math.Max(gap, winner.Gap);
            var cost = winner.Option?.CostOverYears;
            var modules = cost?.Modules.Hundredths ?? 0;
            var rest = (cost?.Total.Hundredths ?? 0) - modules;
            return (new CostLine(rest, modules / times), (winner.Shape, winner.Name, rest));
        })));

    private BreakEven EnergyPrice()
    {
        var now = wanted.EnergyPrice.PerKilowattHour;
        return new BreakEven(BreakEvenQuantity.EnergyPrice, now, Stretches(LowerEnvelope.Of(0, now > 0 ? now * 4 : 1, price =>
        {
            var winner = sizing.Fully(WithEnergyPrice(wanted, price));
            var cost = winner.Option?.CostOverYears;
            var rest = (cost?.Total.Hundredths ?? 0) - (cost?.Energy.Hundredths ?? 0);
            var perUnit = (decimal)(winner.Option?.EnergyOverYears.KilowattHours ?? 0) * Money.FromUnits(1).Hundredths;
            return (new CostLine(rest, perUnit), (winner.Shape, winner.Name, rest));
        })));
    }

    private BreakEven Growth()
    {
        var now = (int)Math.Round(wanted.Growth.Value * GrowthParts);
        var points = new SwitchingPoints(sizing, parts => WithGrowth(wanted, parts));
        return new BreakEven(BreakEvenQuantity.Growth, (decimal)wanted.Growth.Percent,
            Stretches(points, 0, now, Math.Max(2 * now, WidestGrowth),
                parts => decimal.Round((decimal)Share.From((double)parts / GrowthParts).Percent, 2)));
    }

    private BreakEven Hosts()
    {
        var now = wanted.Hosts.Sum(h => h.Count);
        var points = new SwitchingPoints(sizing, hosts => WithHosts(wanted, hosts));
        var most = (int)Math.Min(4L * now, int.MaxValue);
        return new BreakEven(BreakEvenQuantity.Hosts, now, Stretches(points, Math.Max(1, now / 4), now, most, hosts => hosts));
    }

    private BreakEven Oversubscription()
    {
        var stated = wanted.OversubscriptionOf(0);
        var now = (int)Math.Round(stated.Value * RatioParts);
        var points = new SwitchingPoints(sizing, parts => WithRatio(wanted, parts));
        var stretches = Stretches(points, Math.Max(1, now / 3), now, now * 3, parts => Exactly(points, parts));
        return new BreakEven(BreakEvenQuantity.Oversubscription, (decimal)stated.Numerator / stated.Denominator, stretches);
    }

    /// <summary>A ratio that was asked in thousandths, as the ratio that the winner there keeps, where the two are the same step.</summary>
    private static decimal Exactly(SwitchingPoints points, int parts)
    {
        var asked = (decimal)parts / RatioParts;
        if (points.At(parts).Option is not { Needs.Oversubscription: { IsEmpty: false } kept }) return asked;
        var exact = (decimal)kept[0].Numerator / kept[0].Denominator;
        return exact <= asked && asked - exact < 1m / RatioParts ? exact : asked;
    }

    private static ImmutableArray<BreakEvenStretch> Stretches(
        SwitchingPoints points, int low, int now, int high, Func<int, decimal> value)
    {
        var (below, last) = Known(points, now, low);
        var (above, end) = Known(points, now, high);
        // A change on the way down begins at the value above the one where another option wins.
        int[] starts = [last, .. below.Select(b => b + 1).Order(), .. above];
        var stretches = ImmutableArray.CreateBuilder<BreakEvenStretch>();
        for (var i = 0; i < starts.Length; i++)
        {
            var final = i + 1 < starts.Length ? starts[i + 1] - 1 : end;
            var (from, to) = (points.At(starts[i]), points.At(final));
            stretches.Add(new BreakEvenStretch(value(starts[i]), value(final), from.Shape, from.Name, from.Cost, to.Cost)
            {
                Between = [.. points.Asked(starts[i], final).Select(v => (value(v), points.At(v).Cost))],
            });
        }
        return stretches.ToImmutable();
    }

    /// <summary>The changes to tell on a way, and the last value up to which the last of them is known to hold.</summary>
    private static (IReadOnlyList<int> Changes, int End) Known(SwitchingPoints points, int from, int to)
    {
        var changes = points.Changes(from, to);
        return changes.Count < SwitchingPoints.MostChanges
            ? (changes, to)
            : ([.. changes.SkipLast(1)], changes[^1] - Math.Sign(to - from));
    }

    /// <summary>Pieces of the chain, told apart by what does not hang on the price; neighbours that differ only in how links are made are
    /// one option.</summary>
    private static ImmutableArray<BreakEvenStretch> Stretches(
        ImmutableArray<EnvelopePiece<(FabricShape? Shape, string Name, decimal Base)>> pieces)
    {
        var stretches = new List<BreakEvenStretch>();
        foreach (var piece in pieces)
        {
            var (from, to) = (Money.FromHundredths(piece.Line.At(piece.From)), Money.FromHundredths(piece.Line.At(piece.To)));
            if (stretches is [.., var last] && last.Shape == piece.Answer.Shape && last.Name == piece.Answer.Name)
                stretches[^1] = last with { To = piece.To, CostTo = to, Between = last.Between.Add((piece.From, from)) };
            else
                stretches.Add(new BreakEvenStretch(piece.From, piece.To, piece.Answer.Shape, piece.Answer.Name, from, to));
        }
        return [.. stretches];
    }
}
