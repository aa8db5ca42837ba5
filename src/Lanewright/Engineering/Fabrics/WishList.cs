using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Takes what is wanted apart into wishes that can be kept or broken one by one.</summary>
public static class WishList
{
    /// <summary>Key of the number of hosts.</summary>
    public const string Hosts = "hosts";

    /// <summary>Key of the ratio.</summary>
    public const string Oversubscription = "oversubscription";

    /// <summary>Key of what has to survive.</summary>
    public const string Survive = "survive";

    /// <summary>Key of planes.</summary>
    public const string Planes = "planes";

    /// <summary>Key of rails.</summary>
    public const string Rails = "rails";

    /// <summary>Key of the form factors.</summary>
    public const string FormFactors = "form-factors";

    /// <summary>Key of the rates between switches.</summary>
    public const string UplinkRates = "uplink-rates";

    /// <summary>Key of the tiers.</summary>
    public const string Tiers = "tiers";

    /// <summary>Key of the shapes.</summary>
    public const string Shapes = "shapes";

    /// <summary>Key of the rack units.</summary>
    public const string RackUnits = "rack-units";

    /// <summary>Key of the power in a rack.</summary>
    public const string RackPower = "rack-power";

    /// <summary>Key of the weight in a rack.</summary>
    public const string RackWeight = "rack-weight";

    /// <summary>Key of the racks that are named for hosts.</summary>
    public const string Racks = "racks";

    /// <summary>Key of the budget.</summary>
    public const string Budget = "budget";

    /// <summary>A ratio that every switch keeps.</summary>
    internal static Ratio AnyRatio { get; } = new(1_000_000, 1);

    /// <summary>The wishes, in the order of the plan language: the hosts and the ratio always, the others where they bind.</summary>
    public static ImmutableArray<Wish> Of(WantedFabric wanted)
    {
        var wishes = ImmutableArray.CreateBuilder<Wish>();
        var hosts = wanted.Hosts.Sum(h => h.Count);
        wishes.Add(new Wish(Hosts, HostWords(wanted, hosts), n => n.Hosts >= hosts));
        wishes.Add(new Wish(Oversubscription, RatioWords(wanted), n => KeepsRatio(wanted, n)));
        if (wanted.Survive > 0)
            wishes.Add(new Wish(Survive, $"{Numerals.Whole(wanted.Survive)} of a tier out", n => n.Survives >= wanted.Survive));
        if (wanted.Planes > 1) wishes.Add(new Wish(Planes, $"{Numerals.Whole(wanted.Planes)} planes", n => n.Planes == wanted.Planes));
        if (wanted.Rails > 1)
            wishes.Add(new Wish(Rails, $"{Numerals.Whole(wanted.Rails)} rails", n => n.Shape == FabricShape.Rails));
        AddForms(wishes, wanted);
        AddLimits(wishes, wanted);
        return wishes.ToImmutable();
    }

    /// <summary>The wishes a design breaks, one bit each in the order of the list.</summary>
    public static uint Broken(ImmutableArray<Wish> wishes, FabricNeeds needs)
    {
        var broken = 0u;
        for (var i = 0; i < wishes.Length; i++)
            if (!wishes[i].IsKept(needs)) broken |= 1u << i;
        return broken;
    }

    /// <summary>What is wanted with some wishes dropped: one host of each kind, any ratio, no limit.</summary>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="isKept">Whether the wish of a key stays.</param>
    public static WantedFabric Only(WantedFabric wanted, Func<string, bool> isKept) => wanted with
    {
        Hosts = isKept(Hosts) ? wanted.Hosts : [.. wanted.Hosts.Select(h => h with { Count = 1 })],
        Growth = isKept(Hosts) ? wanted.Growth : default,
        Oversubscription = isKept(Oversubscription) ? wanted.Oversubscription : [AnyRatio],
        Survive = isKept(Survive) ? wanted.Survive : 0,
        Planes = isKept(Planes) ? wanted.Planes : 1,
        Rails = isKept(Rails) ? wanted.Rails : 1,
        FormFactors = isKept(FormFactors) ? wanted.FormFactors : [],
        UplinkRates = isKept(UplinkRates) ? wanted.UplinkRates : [],
        MostTiers = isKept(Tiers) ? wanted.MostTiers : null,
        Shapes = isKept(Shapes) ? wanted.Shapes : [],
        RackUnits = isKept(RackUnits) ? wanted.RackUnits : null,
        RackPower = isKept(RackPower) ? wanted.RackPower : null,
        RackWeight = isKept(RackWeight) ? wanted.RackWeight : null,
        HostRacks = isKept(Racks) ? wanted.HostRacks : [],
        SpineRacks = isKept(Racks) ? wanted.SpineRacks : [],
        Budget = isKept(Budget) ? wanted.Budget : null,
    };

    private static void AddForms(ImmutableArray<Wish>.Builder wishes, WantedFabric wanted)
    {
        if (!wanted.FormFactors.IsEmpty)
            wishes.Add(new Wish(FormFactors, string.Join(", ", wanted.FormFactors), n => n.FormFactors.All(wanted.FormFactors.Contains)));
        if (!wanted.UplinkRates.IsEmpty)
            wishes.Add(new Wish(UplinkRates, string.Join(", ", wanted.UplinkRates), n => n.UplinkRates.All(wanted.UplinkRates.Contains)));
        if (wanted.MostTiers is { } tiers)
            wishes.Add(new Wish(Tiers, $"at most {Numerals.Whole(tiers)}", n => n.Tiers <= tiers));
        if (!wanted.Shapes.IsEmpty)
            wishes.Add(new Wish(Shapes, string.Join(", ", wanted.Shapes.Select(FabricShapes.Word)), n => wanted.Shapes.Contains(n.Shape)));
    }

    private static void AddLimits(ImmutableArray<Wish>.Builder wishes, WantedFabric wanted)
    {
        if (wanted.RackUnits is { } units)
            wishes.Add(new Wish(RackUnits, $"at most {Numerals.Whole(units)}", n => n.RackUnits <= units));
        if (wanted.RackPower is { } power)
            wishes.Add(new Wish(RackPower, $"at most {power}", n => n.RackPower <= power));
        if (wanted.RackWeight is { } weight)
            wishes.Add(new Wish(RackWeight, $"at most {weight}", n => n.RackWeight <= weight));
        if (wanted.HostRacks.Length is var named and > 0) wishes.Add(new Wish(Racks, RackWords(wanted), n => n.IsInNamedRacks));
        if (wanted.Budget is { } budget)
            wishes.Add(new Wish(Budget, $"at most {Numerals.Grouped(budget.Units)}", n => n.PriceOverYears <= budget));
    }

    private static string HostWords(WantedFabric wanted, int hosts) =>
        Numerals.Whole(hosts) + (wanted.Growth.Value > 0 && wanted.Years > 0
            ? $", growing {wanted.Growth} a year for {Numerals.Whole(wanted.Years)} years"
            : "");

    private static string RackWords(WantedFabric wanted)
    {
        var words = $"{Numerals.Whole(wanted.HostRacks.Length)} named for the hosts";
        if (!wanted.SpineRacks.IsEmpty) words += $", {Numerals.Whole(wanted.SpineRacks.Length)} for upper tiers";
        return wanted.Site is { } site && site.Binds([.. wanted.HostRacks, .. wanted.SpineRacks])
            ? words + ", with what they bear, feed and cool"
            : words;
    }

    private static string RatioWords(WantedFabric wanted) =>
        wanted.Oversubscription.IsEmpty ? Ratio.One.ToString() : string.Join(", ", wanted.Oversubscription);

    private static bool KeepsRatio(WantedFabric wanted, FabricNeeds needs)
    {
        for (var tier = 0; tier < needs.Oversubscription.Length; tier++)
            if (needs.Oversubscription[tier] > wanted.OversubscriptionOf(tier)) return false;
        return true;
    }
}
