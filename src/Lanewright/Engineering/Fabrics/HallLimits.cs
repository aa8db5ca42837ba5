using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What the racks of a hall bear, feed and cool, and what stands in them already: the limits that the rules hold a plan
/// against, so that no option is offered that breaks one.</summary>
internal sealed class HallLimits
{
    private readonly FinderContext context;
    private readonly PhaseDealer dealer;
    private readonly Dictionary<int, ImmutableArray<StandingDevice>> standing;
    private readonly Dictionary<int, ImmutableArray<PowerFeed>> feedsOf;
    private readonly Dictionary<(int Rack, int Hosts, int HostKind, SwitchBuild Build, int Switches), string> stacks = [];

    private HallLimits(WantedSite site, FinderContext context, PhaseDealer dealer)
    {
        Site = site;
        this.context = context;
        this.dealer = dealer;
        standing = site.Standing.GroupBy(d => d.Rack.Index).ToDictionary(g => g.Key, g => g.ToImmutableArray());
        feedsOf = site.Feeds.SelectMany(f => f.Racks, (feed, rack) => (feed, rack)).GroupBy(f => f.rack)
            .ToDictionary(g => g.Key, g => g.Select(f => f.feed).ToImmutableArray());
    }

    /// <summary>What the plan says of the place.</summary>
    public WantedSite Site { get; }

    /// <summary>The limits of some racks; null where nothing is said of them.</summary>
    /// <param name="site">What the plan says of the place; null where there is none.</param>
    /// <param name="racks">The racks.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="dealer">Knows racks alike that were dealt for earlier questions.</param>
    public static HallLimits? Of(WantedSite? site, ImmutableArray<Rack> racks, FinderContext context, PhaseDealer dealer) =>
        site is not null && site.Binds(racks) ? new HallLimits(site, context, dealer) : null;

    /// <summary>Lowest units of devices so high from the floor of a rack up, around what stands there.</summary>
    public IEnumerable<int> UnitsUp(Rack rack, int units)
    {
        for (var unit = 1; unit + units - 1 <= rack.Type.Units;)
        {
            if (Blocking(rack, unit, units) is not { } other)
            {
                yield return unit;
                unit += units;
            }
            else
            {
                unit = other.Unit + Math.Max(1, other.Group.Model.Units);
            }
        }
    }

    /// <summary>Lowest units of devices so high from a ceiling down to a floor.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="units">Height of each.</param>
    /// <param name="ceiling">The highest unit that may be taken.</param>
    /// <param name="floor">The lowest.</param>
    public IEnumerable<int> UnitsDown(Rack rack, int units, int ceiling, int floor)
    {
        for (var unit = ceiling - units + 1; unit >= floor;)
        {
            if (Blocking(rack, unit, units) is not { } other)
            {
                yield return unit;
                unit -= units;
            }
            else
            {
                unit = other.Unit - units;
            }
        }
    }

    private StandingDevice? Blocking(Rack rack, int unit, int units)
    {
        foreach (var device in StandingIn(rack))
            if (device.Unit < unit + units && unit < device.Unit + Math.Max(1, device.Group.Model.Units)) return device;
        return null;
    }

    private ImmutableArray<StandingDevice> StandingIn(Rack rack) => standing.GetValueOrDefault(rack.Index, []);

    /// <summary>What is in the way of so many switches beside hosts of a kind in a rack; empty when nothing. Modules are not counted
    /// yet.</summary>
    public string OfStack(Rack rack, int hosts, int kind, RackLoad host, SwitchBuild build, int switches)
    {
        var key = (rack.Index, hosts, hosts == 0 ? -1 : kind, build, switches);
        if (stacks.TryGetValue(key, out var found)) return found;
        return stacks[key] = Fault(
            rack, [.. Enumerable.Repeat(host, hosts), .. Enumerable.Repeat(build.Load, switches)]);
    }

    /// <summary>What a rack cannot take of some devices beside what stands there; empty when it takes them.</summary>
    public string Fault(Rack rack, IReadOnlyCollection<RackLoad> loads)
    {
        var type = rack.Type;
        var kilograms = loads.Sum(l => l.Kilograms) + StandingIn(rack).Sum(d => LoadOf(d).Kilograms);
        if (type.WeightLimit is { } most && Rounding.IsAbove(kilograms, most.Kilograms))
            return $"rack {rack.Name} would hold {Numerals.Shown(kilograms, "kg")} and may hold {most}";
        var onFloor = Mass.FromKilograms(kilograms) + (type.OwnWeight ?? default);
        if (rack.Hall.FloorLoad is { } bears && FloorPressure.Of(rack, onFloor, context.Standards) is var load
            && Rounding.IsAbove(load, bears))
            return $"rack {rack.Name} would press on the floor with {Numerals.Shown(load, "kPa")} and the floor bears "
                + $"{Numerals.Plain(bears)} kPa";
        var watts = loads.Sum(l => l.Watts) + StandingIn(rack).Sum(d => LoadOf(d).Watts);
        if (type.PowerLimit is { } limit && Rounding.IsAbove(watts, limit.Value))
            return $"rack {rack.Name} may draw {Numerals.Shown(watts, "W")} and {Numerals.Shown(limit.Value, "W")} can be fed and cooled "
                + "there";
        return feedsOf.TryGetValue(rack.Index, out var feeds) ? OfStrips(rack, loads, feeds) : "";
    }

    private string OfStrips(Rack rack, IEnumerable<RackLoad> loads, ImmutableArray<PowerFeed> feeds)
    {
        ImmutableArray<StripUse> uses =
        [
            .. loads.Select(l => new StripUse(Watts.From(l.Watts), feeds)),
            .. StandingIn(rack).Select(d => new StripUse(Watts.From(LoadOf(d).Watts), StripLoads.FeedsOf(d.Group.Feeds, feeds))),
        ];
        foreach (var feed in feeds)
        {
            if (StripLoads.BearsPlainly(uses, feeds, feed, context.Policy)) continue;
            var strip = StripLoads.Of(rack, uses, feeds, feed, context.Policy, dealer);
            if (Rounding.IsAbove(strip.Highest.Value, strip.Limit.Value))
                return $"the strip of '{feed.Name}' in rack {rack.Name} would carry {strip.Highest} and may carry {strip.Limit} "
                    + "without end";
            if (strip is { Lost: { } lost } && Rounding.IsAbove(strip.AfterLoss.Value, strip.Limit.Value))
                return $"the strip of '{feed.Name}' in rack {rack.Name} would carry {strip.AfterLoss} when '{lost.Name}' is lost and may "
                    + $"carry {strip.Limit} without end";
        }
        return "";
    }

    /// <summary>The first limit that a counted fabric breaks, with the rack that is to blame; no rack where the hall as a whole
    /// is.</summary>
    public (Rack? Rack, string Text) FaultOf(FabricState state)
    {
        var groups = state.Fabric.Layout.Groups;
        var inRack = new SortedDictionary<int, (Rack Rack, List<RackLoad> Loads)>();
        for (var g = 0; g < groups.Length; g++)
        {
            var group = groups[g];
            var own = RackLoad.Of(group.Model, group.Cards);
            for (var i = 0; i < group.Places.Length; i++)
            {
                var rack = group.Places[i].Rack;
                if (!inRack.TryGetValue(rack.Index, out var there)) inRack[rack.Index] = there = (rack, []);
                there.Loads.Add(own with { Watts = own.Watts + state.ModuleWatts[g][i] });
            }
        }
        foreach (var (rack, loads) in inRack.Values)
            if (Fault(rack, loads) is { Length: > 0 } fault) return (rack, fault);
        if (inRack.Values.FirstOrDefault().Rack is not { } first) return (null, "");
        var over = inRack.Values.Sum(r => r.Loads.Sum(l => l.Watts)) - WattsLeft(first.Hall, 0);
        if (Rounding.IsAbove(over, 0)) return (null, HeatFault(first.Hall, over, ""));
        return (null, state.Fabric.Hall.Ways is { } ways ? TrayFill.Fault(ways, state.Tallies, context.Standards) : "");
    }

    /// <summary>Watts that a hall still carries away beside what stands there and so many watts; infinite where nothing is said.</summary>
    public double WattsLeft(Hall hall, double watts) => hall.Cooling is { } cooling
        ? cooling.Value - watts - Site.Standing.Where(d => d.Rack.Hall == hall).Sum(d => LoadOf(d).Watts)
        : double.PositiveInfinity;

    /// <summary>Tells that a hall carries away too little.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="over">Watts it carries away too little.</param>
    /// <param name="orMore">What is added where they are the least.</param>
    public static string HeatFault(Hall hall, double over, string orMore)
    {
        var most = hall.Cooling?.Value ?? 0;
        return $"equipment in {hall.Name} would give off {Numerals.Shown(most + over, "W")}{orMore} and "
            + $"{Numerals.Shown(most, "W")} are carried away";
    }

    private static RackLoad LoadOf(StandingDevice device) => RackLoad.Of(device.Group.Model, device.Group.Cards);
}
