using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds what would change the answer, one quantity at a time, everything else as asked. Against a price the least cost is a
/// chain of straight lines, and its corners are found exactly; growth, ratio and hosts go in steps, proven part by part.</summary>
public sealed class BreakEvens
{
    private const decimal LeastModulePrice = 0.25m;
    private const int RatioParts = 1000;
    private const int GrowthParts = 10_000;
    private const int LeastGrowthLooked = 3000;

    private readonly WantedFabric wanted;
    private readonly FinderContext context;
    private readonly Sizing sizing;
    private readonly Action<BreakEvenQuantity, int>? step;

    private BreakEvens(WantedFabric wanted, FinderContext context, Action<BreakEvenQuantity, int>? step)
    {
        this.step = step;
        this.wanted = wanted;
        this.context = context;
        sizing = new Sizing(context);
    }

    /// <summary>One answer a quantity.</summary>
    /// <param name="wanted">What is asked; something fits it.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="step">Told of each quantity, and how many questions about it have been answered; null when nobody waits.</param>
    public static ImmutableArray<BreakEven> Of(WantedFabric wanted, FinderContext context, Action<BreakEvenQuantity, int>? step = null)
    {
        var search = new BreakEvens(wanted, context, step);
        var found = ImmutableArray.CreateBuilder<BreakEven>();
        foreach (var quantity in Enum.GetValues<BreakEvenQuantity>())
        {
            step?.Invoke(quantity, 0);
            found.Add(search.Of(quantity));
        }
        return found.ToImmutable();
    }

    /// <summary>One quantity alone.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="wanted">What is asked; something fits it.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="step">Told how many questions about it have been answered.</param>
    public static BreakEven Of(
        BreakEvenQuantity quantity, WantedFabric wanted, FinderContext context, Action<BreakEvenQuantity, int> step)
    {
        step(quantity, 0);
        return new BreakEvens(wanted, context, step).Of(quantity);
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

    private BreakEven ModulePrice() => AgainstPrice(BreakEvenQuantity.ModulePrice, 1, (LeastModulePrice, 4),
        (times, near) => new Sizing(WithModulePrice(context, times)).Cheapest(wanted, near),
        (option, times) => (option.CostOverYears.Modules.Hundredths, option.CostOverYears.Modules.Hundredths / times));

    private BreakEven EnergyPrice()
    {
        var now = wanted.EnergyPrice.PerKilowattHour;
        return AgainstPrice(BreakEvenQuantity.EnergyPrice, now, (0, now > 0 ? now * 4 : 1),
            (price, near) => sizing.Cheapest(WithEnergyPrice(wanted, price), near),
            (option, _) => (option.CostOverYears.Energy.Hundredths,
                (decimal)option.EnergyOverYears.KilowattHours * Money.FromUnits(1).Hundredths));
    }

    /// <summary>The chain of the cheapest against a price.</summary>
    /// <param name="quantity">The price.</param>
    /// <param name="now">What it is now.</param>
    /// <param name="range">Where it is looked at.</param>
    /// <param name="ask">The cheapest at a price, with the shape that has won nearby.</param>
    /// <param name="priced">Hundredths of an option that hang on the price, there and for each unit of it.</param>
    private BreakEven AgainstPrice(
        BreakEvenQuantity quantity, decimal now, (decimal Least, decimal Most) range, Func<decimal, FabricShape?, Winner> ask,
        Func<FabricOption, decimal, (decimal There, decimal PerUnit)> priced)
    {
        var (gap, answers) = (0.0, 0);
        FabricShape? near = null;
        var chain = LowerEnvelope.Of(range.Least, range.Most, price =>
        {
            step?.Invoke(quantity, ++answers);
            var winner = ask(price, near);
            (gap, near) = (Math.Max(gap, winner.Gap), winner.Shape);
            var (there, perUnit) = winner.Option is { } option ? priced(option, price) : (0, 0);
            var rest = (winner.Option?.CostOverYears.Total.Hundredths ?? 0) - there;
            return (new CostLine(rest, perUnit), (winner.Shape, winner.Name, rest));
        });
        return new BreakEven(quantity, now, Stretches(chain)) { Gap = Share.From(gap) };
    }

    private BreakEven Growth()
    {
        var now = (int)Math.Round(wanted.Growth.Value * GrowthParts);
        var steps = GrowthSteps.Of(MostGrowth(now), parts => WithGrowth(wanted, parts));
        var axis = new StepAxis(0, steps.At(now), steps.Count - 1, step => WithGrowth(wanted, steps.First(step)));
        return Solved(BreakEvenQuantity.Growth, (decimal)wanted.Growth.Percent, axis,
            (step, _) => Percent(steps.First(step)), (step, _) => Percent(steps.Last(step)));
    }

    /// <summary>How far growth is looked at: no farther than hosts can be counted.</summary>
    private int MostGrowth(int now)
    {
        var most = Math.Max(2 * now, LeastGrowthLooked);
        while (most > now && wanted.Hosts.Any(h => h.Count * Math.Pow(1 + ((double)most / GrowthParts), wanted.Years) >= int.MaxValue))
            most = now + ((most - now) / 2);
        return most;
    }

    private static decimal Percent(int parts) => decimal.Round((decimal)Share.From((double)parts / GrowthParts).Percent, 2);

    private BreakEven Hosts()
    {
        var now = wanted.Hosts.Sum(h => h.Count);
        var axis = new StepAxis(Math.Max(1, (now + 1) / 2), now, (int)Math.Min(2L * now, int.MaxValue), hosts => WithHosts(wanted, hosts));
        return Solved(BreakEvenQuantity.Hosts, now, axis with { IsUneven = wanted.Hosts.Length > 1 }, (hosts, _) => hosts);
    }

    private BreakEven Oversubscription()
    {
        var stated = wanted.OversubscriptionOf(0);
        var now = (int)Math.Round(stated.Value * RatioParts);
        var axis = new StepAxis(Math.Max(1, (now + 1) / 2), now, now * 2, parts => WithRatio(wanted, parts))
        {
            IsHarderUpward = false,
            KeepsHosts = true,
        };
        return Solved(BreakEvenQuantity.Oversubscription, (decimal)stated.Numerator / stated.Denominator, axis, Exactly);
    }

    /// <summary>A ratio that was asked in thousandths, as the ratio that the winner there keeps, where the two are the same step.</summary>
    private static decimal Exactly(int parts, Winner? winner)
    {
        var asked = (decimal)parts / RatioParts;
        if (winner?.Option is not { Needs.Oversubscription: { IsEmpty: false } kept }) return asked;
        var exact = (decimal)kept[0].Numerator / kept[0].Denominator;
        return exact <= asked && asked - exact < 1m / RatioParts ? exact : asked;
    }

    /// <summary>Stretches of a quantity that goes in steps.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="now">What it is now.</param>
    /// <param name="axis">Its steps.</param>
    /// <param name="value">What a step is told as.</param>
    /// <param name="last">What a step that stands for several values ends with; null where each stands for one.</param>
    private BreakEven Solved(
        BreakEvenQuantity quantity, decimal now, StepAxis axis, Func<int, Winner?, decimal> value, Func<int, Winner?, decimal>? last = null)
    {
        var stretches = StepProof.Of(sizing, axis, answers => step?.Invoke(quantity, answers), out var prices);
        decimal First(int step) => value(step, prices.GetValueOrDefault(step));
        decimal Last(int step) => (last ?? value)(step, prices.GetValueOrDefault(step));
        Money Cost(int step) => prices.TryGetValue(step, out var winner) ? winner.Cost : Money.Zero;
        return new BreakEven(quantity, now,
        [
            .. stretches.Select(s =>
            {
                var inside = prices.Where(p => p.Key >= s.From && p.Key <= s.To).Select(p => p.Key).ToList();
                // A part that was proven as a whole may end at a value that was not asked; its price is that of the nearest one.
                var (lowest, highest) = inside.Count > 0 ? (inside[0], inside[^1]) : (Nearest(prices, s.From), Nearest(prices, s.To));
                var (from, to) = (First(s.From), Last(s.To));
                return new BreakEvenStretch(from, to, s.Winner.Shape, s.Winner.Name, Cost(lowest), Cost(highest))
                {
                    IsProven = s.IsProven,
                    Between =
                    [
                        .. inside.SelectMany(v => new[] { (At: First(v), Cost(v)), (At: Last(v), Cost(v)) }).Distinct()
                            .Where(p => p.At > from && p.At < to),
                    ],
                };
            }),
        ])
        {
            Gap = Share.From(prices.Values.Max(w => w.Gap)),
            Asked = prices.Count,
        };
    }

    private static int Nearest(ImmutableSortedDictionary<int, Winner> prices, int step) => prices.Keys.MinBy(k => Math.Abs((long)k - step));

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
