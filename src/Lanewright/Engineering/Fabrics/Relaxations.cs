using System.Collections.Immutable;
using Lanewright.Model.Binding;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds for each wish the smallest giving way that makes a fabric possible while the others are kept, by solving.</summary>
/// <param name="wanted">What is wanted and not possible.</param>
/// <param name="conflicts">The sets of wishes that cannot be had together: a wish outside any of them cannot give way enough.</param>
/// <param name="solve">The cheapest designs that keep everything asked for; none when nothing does.</param>
/// <param name="any">Some design that does, found sooner; null to ask for the cheapest always.</param>
/// <param name="offer">What may be allowed beside; null to know only what the cheapest designs use.</param>
public sealed class Relaxations(
    WantedFabric wanted, ImmutableArray<ImmutableArray<Wish>> conflicts, Func<WantedFabric, ImmutableArray<FabricNeeds>> solve,
    Func<WantedFabric, ImmutableArray<FabricNeeds>>? any = null, SwitchOffer? offer = null)
{
    private readonly Func<WantedFabric, ImmutableArray<FabricNeeds>> quick = any ?? solve;
    private const int PerMille = 1000;

    /// <summary>One answer a wish, in the order of the wishes; growth is answered beside the hosts it raises.</summary>
    public ImmutableArray<Relaxation> All()
    {
        var answers = ImmutableArray.CreateBuilder<Relaxation>();
        foreach (var wish in WishList.Of(wanted))
        {
            answers.Add(Of(wish));
            if (wish.Key == WishList.Hosts && wanted.Growth.Value > 0 && wanted.Years > 0) answers.Add(Growth(wish));
            if (wish.Key == WishList.Racks) answers.Add(PerRack(wish));
        }
        return answers.ToImmutable();
    }

    private Relaxation Of(Wish wish)
    {
        var degrees = Loosenings.Of(wanted, wish);
        if (!conflicts.All(c => c.Any(w => w.Key == wish.Key)))
            return new Relaxation(wish, null, "") { Figures = degrees?.Figures(null) };
        if (degrees is { } loosening) return Moved(wish, loosening);
        return wish.Key switch
        {
            WishList.Hosts => Fewer(wish),
            WishList.Tiers => First(
                wish, wanted.MostTiers ?? 0, Up(wanted.MostTiers ?? 0, 3), t => wanted with { MostTiers = t }, t => Numerals.Whole(t)),
            WishList.Survive => First(
                wish, wanted.Survive, Down(wanted.Survive, 0), f => wanted with { Survive = f }, f => Numerals.Whole(f)),
            WishList.Planes => First(wish, wanted.Planes, Down(wanted.Planes, 1), p => wanted with { Planes = p }, p => Numerals.Whole(p)),
            WishList.Rails => First(wish, wanted.Rails, [1], r => wanted with { Rails = r }, _ => "none"),
            WishList.Racks => solve(wanted with { HostRacks = [], SpineRacks = [] }) is [var best, ..]
                ? new Relaxation(wish, RackWords(best), best.Name)
                {
                    Figures = new WishFigures(wanted.HostRacks.Length, best.HostRacks, ""),
                }
                : new Relaxation(wish, null, ""),
            WishList.FormFactors => Joined(
                wish, wanted.FormFactors, offer?.FormFactors, n => n.FormFactors, f => wanted with { FormFactors = f }, f => f),
            WishList.UplinkRates => Joined(
                wish, wanted.UplinkRates, offer?.Rates, n => n.UplinkRates, r => wanted with { UplinkRates = r }, r => r.ToString()),
            WishList.Shapes => Joined(
                wish, wanted.Shapes, null, n => [n.Shape], s => wanted with { Shapes = s }, FabricShapes.Word),
            _ => new Relaxation(wish, null, ""),
        };
    }

    /// <summary>Racks of the usual kind, of which nothing is said but their height.</summary>
    private string RackWords(FabricNeeds needs) => Numerals.Whole(needs.HostRacks)
        + (needs.HostRacks > wanted.HostRacks.Length ? " racks" : " racks that bear, feed and cool all of it");

    /// <summary>The least limit that is possible: asks for strictly less than the best known until nothing is found, and in between for
    /// the middle between the best known and what is known to be impossible, so that it does not creep.</summary>
    private Relaxation Moved(Wish wish, Loosening loosening)
    {
        // The cheapest design tells the least budget at once; of other limits any design tells one that is possible.
        var ask = wish.Key == WishList.Budget ? solve : quick;
        if (Least(ask(loosening.With(null)), loosening) is not { } best)
            return new Relaxation(wish, null, "") { Figures = loosening.Figures(null) };
        var known = new Stack<FabricNeeds>([best]);
        var impossible = loosening.Stated;
        while (loosening.Value(best) - loosening.Step is var less && less > impossible
            && Least(ask(loosening.With(less)), loosening) is { } nearer)
        {
            known.Push(best = nearer);
            var middle = (impossible + loosening.Value(best)) / 2;
            if (Least(ask(loosening.With(middle)), loosening) is { } halfway) known.Push(best = halfway);
            else impossible = middle;
        }
        // What is told has to be found when it is asked for; where searches are broken off, a question in between may have had more luck.
        foreach (var needs in known)
            if (ask(loosening.Told(needs)) is [var some, ..])
                return new Relaxation(wish, loosening.Words(needs), NameOf(loosening.Told(needs), some))
                {
                    Figures = loosening.Figures(needs),
                };
        return new Relaxation(wish, null, "") { Figures = loosening.Figures(null) };
    }

    /// <summary>The cheapest design of a question that has one.</summary>
    private string NameOf(WantedFabric possible, FabricNeeds known) => solve(possible) is [var cheapest, ..] ? cheapest.Name : known.Name;

    private static FabricNeeds? Least(ImmutableArray<FabricNeeds> designs, Loosening loosening) =>
        designs.IsEmpty ? null : designs.MinBy(loosening.Value);

    /// <summary>The most hosts that are possible; with several kinds all give way in proportion.</summary>
    private Relaxation Fewer(Wish wish)
    {
        var stated = wanted.Hosts.Sum(h => h.Count);
        var (possible, tooMany) = (0, stated);
        FabricNeeds? best = null;
        while (tooMany - possible > 1)
        {
            var middle = possible + ((tooMany - possible) / 2);
            var designs = quick(wanted with { Hosts = HostShares.Of(wanted.Hosts, middle) });
            if (designs.IsEmpty)
            {
                tooMany = middle;
                continue;
            }
            (possible, best) = (middle, designs[0]);
        }
        if (best is null) return new Relaxation(wish, null, "") { Figures = new WishFigures(stated, null, "") };
        var hosts = HostShares.Of(wanted.Hosts, possible);
        ImmutableArray<(string Kind, int Count)> byKind = wanted.Hosts.Length > 1 ? [.. hosts.Select(h => (h.Name, h.Count))] : [];
        var words = Numerals.Whole(possible)
            + (byKind.IsEmpty ? "" : $" ({string.Join(", ", byKind.Select(k => $"{Numerals.Whole(k.Count)} {k.Kind}"))})");
        return new Relaxation(wish, words, NameOf(wanted with { Hosts = hosts }, best))
        {
            Figures = new WishFigures(stated, possible, "") { ByKind = byKind },
        };
    }

    /// <summary>The most growth that is possible, to a tenth of a per cent.</summary>
    private Relaxation Growth(Wish hosts)
    {
        var wish = hosts with { Key = "growth", Text = wanted.Growth.ToString() };
        if (!conflicts.All(c => c.Any(w => w.Key == hosts.Key))) return new Relaxation(wish, null, "");
        var (possible, tooMuch) = (-1, (int)Math.Ceiling(wanted.Growth.Value * PerMille));
        FabricNeeds? best = null;
        while (tooMuch - possible > 1)
        {
            var middle = possible + ((tooMuch - possible) / 2);
            var designs = quick(wanted with { Growth = Share.From((double)middle / PerMille) });
            if (designs.IsEmpty) tooMuch = middle;
            else (possible, best) = (middle, designs[0]);
        }
        var percent = (decimal)wanted.Growth.Percent;
        return best is null
            ? new Relaxation(wish, null, "") { Figures = new WishFigures(percent, null, "%") }
            : new Relaxation(wish, Share.From((double)possible / PerMille).ToString(),
                NameOf(wanted with { Growth = Share.From((double)possible / PerMille) }, best))
            {
                Figures = new WishFigures(percent, (decimal)Share.From((double)possible / PerMille).Percent, "%"),
            };
    }

    /// <summary>The hosts in a rack, beside those wanted, with which the racks named suffice: more where racks are too few, fewer where a
    /// rack does not bear or feed so many; the nearest.</summary>
    private Relaxation PerRack(Wish racks)
    {
        string Words(WantedFabric some) => string.Join(", ", some.Hosts.Select(h => Numerals.Whole(h.PerRack)));
        var wish = racks with { Key = "per-rack", Text = Words(wanted) };
        if (!conflicts.All(c => c.Any(w => w.Key == racks.Key))) return new Relaxation(wish, null, "");
        for (var by = 1; by < WantedLanguage.MostPerRack; by++)
        {
            foreach (var change in new[] { -by, by })
            {
                if (wanted.Hosts.Any(h => h.PerRack + change is < 1 or > WantedLanguage.MostPerRack)) continue;
                var other = wanted with { Hosts = [.. wanted.Hosts.Select(h => h with { PerRack = h.PerRack + change })] };
                if (FabricHall.RacksFor(other) > wanted.HostRacks.Length) continue;
                if (quick(other) is not [var best, ..]) continue;
                return new Relaxation(wish, Words(other), NameOf(other, best))
                {
                    Figures = new WishFigures(wanted.Hosts[0].PerRack, other.Hosts[0].PerRack, "")
                    {
                        ByKind = other.Hosts.Length > 1 ? [.. other.Hosts.Select(h => (h.Name, h.PerRack))] : [],
                    },
                };
            }
        }
        return new Relaxation(wish, null, "");
    }

    private Relaxation First(Wish wish, int stated, IEnumerable<int> values, Func<int, WantedFabric> with, Func<int, string> words)
    {
        foreach (var value in values)
            if (quick(with(value)) is [var best, ..])
                return new Relaxation(wish, words(value), NameOf(with(value), best)) { Figures = new WishFigures(stated, value, "") };
        return new Relaxation(wish, null, "") { Figures = new WishFigures(stated, null, "") };
    }

    /// <summary>What has to be allowed beside: the fewest things, then the cheapest design.</summary>
    /// <param name="wish">The wish.</param>
    /// <param name="stated">What is allowed.</param>
    /// <param name="all">All that could be; null for what the cheapest designs use.</param>
    /// <param name="used">What a design uses.</param>
    /// <param name="with">The question that allows some; everything where there are none.</param>
    /// <param name="word">One of them in words.</param>
    private Relaxation Joined<T>(Wish wish, ImmutableArray<T> stated, ImmutableArray<T>? all, Func<FabricNeeds, ImmutableArray<T>> used,
        Func<ImmutableArray<T>, WantedFabric> with, Func<T, string> word)
    {
        var cheapest = solve(with([])).OrderBy(n => (Beside(n).Length, n.PriceOverYears)).ToList();
        foreach (var beside in FewerThan(cheapest.Count == 0 ? 0 : Beside(cheapest[0]).Length).Concat(cheapest.Select(Beside)))
        {
            if (quick(with([.. stated, .. beside])) is not [var found, ..]) continue;
            return new Relaxation(
                wish, "also " + string.Join(", ", beside.Select(word)), NameOf(with([.. stated, .. beside]), found))
            {
                Figures = new WishFigures(null, null, "") { Beside = [.. beside.Select(word)] },
            };
        }
        return new Relaxation(wish, null, "");

        ImmutableArray<T> Beside(FabricNeeds needs) => [.. used(needs).Except(stated)];

        // Dearer designs may do with fewer things than the cheapest of each shape.
        IEnumerable<ImmutableArray<T>> FewerThan(int most)
        {
            var others = (all ?? []).Except(stated).ToList();
            if (most > 1)
                foreach (var one in others) yield return [one];
            if (most <= 2) yield break;
            for (var i = 0; i < others.Count; i++)
                for (var j = i + 1; j < others.Count; j++) yield return [others[i], others[j]];
        }
    }

    private static IEnumerable<int> Up(int above, int most) => Enumerable.Range(above + 1, Math.Max(0, most - above));

    private static IEnumerable<int> Down(int below, int least) => Enumerable.Range(1, Math.Max(0, below - least)).Select(i => below - i);
}
