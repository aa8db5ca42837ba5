using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The wishes whose limit can be moved by degrees.</summary>
internal static class Loosenings
{
    /// <summary>Ratios are moved in millionths of what is wanted.</summary>
    private const long RatioParts = 1_000_000;

    private const decimal Gram = 0.001m;

    /// <summary>How a wish is moved; null where it has no degrees.</summary>
    public static Loosening? Of(WantedFabric wanted, Wish wish) => wish.Key switch
    {
        WishList.RackUnits => new Loosening(wanted.RackUnits ?? 0, 1, v => wanted with { RackUnits = (int?)v },
            n => n.RackUnits, n => Numerals.Whole(n.RackUnits)),
        WishList.Budget => new Loosening(wanted.Budget?.Hundredths ?? 0, 1,
            v => wanted with { Budget = v is { } hundredths ? Money.FromHundredths(hundredths) : null },
            n => n.PriceOverYears.Hundredths, n => Numerals.Grouped(n.PriceOverYears.Units, 2))
        {
            Wanted = wanted.Budget?.Units ?? 0,
            Shown = n => n.PriceOverYears.Units,
        },
        WishList.RackPower => new Loosening((decimal)(wanted.RackPower?.Value ?? 0), Gram,
            v => wanted with { RackPower = v is { } watts ? Watts.From((double)watts) : null },
            n => (decimal)n.RackPower.Value, n => n.RackPower.ToString()) { Unit = "W" },
        WishList.RackWeight => new Loosening((decimal)(wanted.RackWeight?.Kilograms ?? 0), Gram,
            v => wanted with { RackWeight = v is { } kilograms ? Mass.FromKilograms((double)kilograms) : null },
            n => (decimal)n.RackWeight.Kilograms, n => n.RackWeight.ToString()) { Unit = "kg" },
        WishList.Oversubscription => new Loosening(1, 1m / RatioParts, v => WithRatio(wanted, v),
            n => Excess(wanted, n), n => string.Join(", ", n.OversubscriptionLeft))
        {
            Wanted = Plain(wanted.OversubscriptionOf(0)),
            Shown = n => n.OversubscriptionLeft.IsEmpty ? 1 : Plain(n.OversubscriptionLeft[0]),
            Again = n => n.OversubscriptionLeft.IsEmpty ? wanted : wanted with { Oversubscription = n.OversubscriptionLeft },
        },
        _ => null,
    };

    private static decimal Plain(Ratio ratio) => (decimal)ratio.Numerator / ratio.Denominator;

    private static WantedFabric WithRatio(WantedFabric wanted, decimal? times)
    {
        var tiers = Math.Max(1, wanted.Oversubscription.Length);
        // No ratio at all is one no switch exceeds.
        var parts = times is { } factor ? (long)Math.Floor(factor * RatioParts) : RatioParts * RatioParts;
        return wanted with
        {
            Oversubscription = [.. Enumerable.Range(0, tiers).Select(t => wanted.OversubscriptionOf(t) * new Ratio(parts, RatioParts))],
        };
    }

    /// <summary>How many times over the wanted ratio the worst tier is.</summary>
    private static decimal Excess(WantedFabric wanted, FabricNeeds needs)
    {
        var worst = 0m;
        for (var tier = 0; tier < needs.OversubscriptionLeft.Length; tier++)
        {
            var (achieved, limit) = (needs.OversubscriptionLeft[tier], wanted.OversubscriptionOf(tier));
            worst = Math.Max(worst, (decimal)achieved.Numerator * limit.Denominator / ((decimal)achieved.Denominator * limit.Numerator));
        }
        return worst;
    }
}
