using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What is said of hosts beside their number, as wishes. They are given up last: only where one host of each kind cannot be had
/// either do they stand in the way.</summary>
/// <param name="wanted">What is wanted.</param>
/// <param name="rates">Rates that ports of some host of the catalogue have.</param>
internal sealed class HostWishes(WantedFabric wanted, ImmutableArray<BitRate> rates)
{
    /// <summary>Key of the rate of their ports.</summary>
    public const string Rate = "host-rate";

    /// <summary>Key of the number of their ports.</summary>
    public const string Ports = "host-ports";

    /// <summary>Key of how many stand in a rack.</summary>
    public const string PerRack = "per-rack";

    /// <summary>Key of what they are and of their cards.</summary>
    public const string Model = "host-model";

    /// <summary>These wishes, which no design keeps that was found without them.</summary>
    public ImmutableArray<Wish> All
    {
        get
        {
            var wishes = ImmutableArray.CreateBuilder<Wish>();
            wishes.Add(new Wish(Rate, Words(wanted, Rate), _ => false));
            if (wanted.Hosts.Any(h => h.Ports > 1)) wishes.Add(new Wish(Ports, Words(wanted, Ports), _ => false));
            if (wanted.Hosts.Any(h => h.PerRack > 1)) wishes.Add(new Wish(PerRack, Words(wanted, PerRack), _ => false));
            if (wanted.Hosts.Any(IsNamed)) wishes.Add(new Wish(Model, Words(wanted, Model), _ => false));
            return wishes.ToImmutable();
        }
    }

    /// <summary>A question without some of these wishes: with each other value instead, the likeliest first.</summary>
    /// <param name="question">The question.</param>
    /// <param name="isKept">Whether the wish of a key stays.</param>
    public IEnumerable<WantedFabric> Without(WantedFabric question, Func<string, bool> isKept)
    {
        var least = question with
        {
            // Whatever stands in a rack with others stands there alone.
            Hosts = [.. question.Hosts.Select(h => isKept(PerRack) ? h : h with { PerRack = 1 })
                .Select(h => isKept(Model) ? h : h with { Model = null, Cards = [] })],
        };
        return
            from ports in isKept(Ports) ? [least] : FewPorts(least)
            from rate in isKept(Rate) ? [ports] : Others(ports, Rate).Select(o => o.Question).Prepend(ports)
            select rate;
    }

    /// <summary>How far each of these wishes has to give way, the others kept.</summary>
    /// <param name="conflicts">The sets of wishes that cannot be had together.</param>
    /// <param name="any">Some design that keeps everything asked for; none when nothing does.</param>
    /// <param name="solve">The cheapest of them.</param>
    public ImmutableArray<Relaxation> Relaxations(
        ImmutableArray<ImmutableArray<Wish>> conflicts, Func<WantedFabric, ImmutableArray<FabricNeeds>> any,
        Func<WantedFabric, ImmutableArray<FabricNeeds>> solve) =>
        [.. All.Select(w => conflicts.All(c => c.Any(o => o.Key == w.Key)) ? Nearest(w, any, solve) : new Relaxation(w, null, ""))];

    private Relaxation Nearest(
        Wish wish, Func<WantedFabric, ImmutableArray<FabricNeeds>> any, Func<WantedFabric, ImmutableArray<FabricNeeds>> solve)
    {
        foreach (var (question, value) in Others(wanted, wish.Key))
        {
            if (any(question) is not [var found, ..]) continue;
            var best = solve(question) is [var cheapest, ..] ? cheapest : found;
            return new Relaxation(wish, Words(question, wish.Key), best.Name) { Figures = Figures(wish.Key, value) };
        }
        return new Relaxation(wish, null, "") { Figures = Figures(wish.Key, null) };
    }

    /// <summary>Questions with another value of one wish, the nearest first.</summary>
    private IEnumerable<(WantedFabric Question, decimal? Value)> Others(WantedFabric question, string key)
    {
        if (key == Model)
            return [(question with { Hosts = [.. question.Hosts.Select(h => h with { Model = null, Cards = [] })] }, null)];
        var others =
            from value in key == Rate ? rates.Select(r => (decimal)r.Gigabits) : Fewer(question, key)
            from changed in Enumerable.Range(0, question.Hosts.Length).Select(k => (int?)k).Append(null)
            let hosts = question.Hosts.Select((h, k) => changed is { } only && only != k ? h : With(h, key, value)).ToImmutableArray()
            let far = hosts.Zip(question.Hosts, (now, before) => Math.Abs(Value(now, key) - Value(before, key))).Sum()
            where far > 0
            orderby far, value
            select (Question: question with { Hosts = hosts }, (decimal?)value);
        return others.DistinctBy(o => string.Join(' ', o.Question.Hosts.Select(h => Value(h, key))));
    }

    private static IEnumerable<decimal> Fewer(WantedFabric question, string key) =>
        Enumerable.Range(1, (int)question.Hosts.Max(h => Value(h, key))).Select(n => (decimal)n);

    /// <summary>So few ports that a host takes them if it takes any, as planes and rails need them.</summary>
    private static IEnumerable<WantedFabric> FewPorts(WantedFabric question) =>
        new[] { 1, 2, question.Planes, question.Rails, question.Planes * question.Rails }.Distinct()
            .Select(n => question with { Hosts = [.. question.Hosts.Select(h => h with { Ports = n })] });

    private static HostDemand With(HostDemand host, string key, decimal value) => key switch
    {
        Rate => host with { Rate = BitRate.FromGigabits((double)value) },
        Ports => host with { Ports = (int)value },
        _ => host with { PerRack = (int)value },
    };

    private static decimal Value(HostDemand host, string key) => key switch
    {
        Rate => (decimal)host.Rate.Gigabits,
        Ports => host.Ports,
        _ => host.PerRack,
    };

    private WishFigures? Figures(string key, decimal? possible) =>
        key == Model ? null : new WishFigures(Value(wanted.Hosts[0], key), possible, key == Rate ? "Gb/s" : "");

    private static string Words(WantedFabric some, string key) => string.Join(", ", some.Hosts.Select(h => key switch
    {
        Rate => h.Rate.ToString(),
        Model => IsNamed(h) ? string.Join(" with ", new[] { h.Model?.Name ?? "any" }.Concat(h.Cards.Select(c => c.Name))) : "any",
        _ => Numerals.Whole((int)Value(h, key)),
    }));

    private static bool IsNamed(HostDemand host) => host.Model is not null || !host.Cards.IsEmpty;
}
