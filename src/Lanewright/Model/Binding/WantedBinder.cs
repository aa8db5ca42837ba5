using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Model.Wanted;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>wanted</c> into the fabric that is asked for.</summary>
internal sealed class WantedBinder(
    PlanTree tree, Catalogue catalogue, StandardsLibrary standards, Building building, Func<string[], bool> isPlaceInDoubt,
    DeviceTable devices, FindingSink findings)
{
    private const int UsualYears = 4;
    private const int UsualPerRack = 16;

    /// <summary>What is asked for; null when nothing is, or no host could be made of it.</summary>
    /// <param name="stock">Equipment on hand.</param>
    /// <param name="policy">What holds for the whole project.</param>
    /// <param name="power">Power feeds.</param>
    public WantedFabric? Bind(ImmutableArray<StockItem> stock, Policy policy, ImmutableArray<PowerFeed> power)
    {
        if (tree.Map("wanted") is not { } map) return null;
        var hosts = Hosts(map);
        if (hosts.IsEmpty) return null;
        var wanted = new WantedFabric
        {
            Hosts = hosts,
            Span = map.Span,
            Growth = map.Share("growth") ?? default,
            Years = map.Whole("years") ?? UsualYears,
            Oversubscription = Ratios(map) is { IsEmpty: false } own ? own : policy.Oversubscription,
            Survive = map.Whole("survive") ?? 0,
            Planes = map.Whole("planes") ?? 1,
            Rails = map.Whole("rails") ?? 1,
            FormFactors = FormFactors(map),
            UplinkRates = [.. map.Texts("uplink-rates").Select(RateOf).OfType<BitRate>().Distinct().Order()],
            MostTiers = map.Whole("tiers"),
            Shapes = [.. FabricShapes.All.Where(s => map.Texts("shapes").Any(t => t.Value == FabricShapes.Word(s)))],
            RackUnits = map.Whole("rack-units"),
            RackPower = map.Watts("rack-power"),
            RackWeight = map.InUnits("rack-weight", UnitText.Masses) is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            Budget = map.Real("budget") is { } budget ? Money.FromUnits(budget) : null,
            EnergyPrice = EnergyPrice.FromPerKilowattHour((decimal)(map.Real("energy-price") ?? 0)),
            Overhead = map.Share("overhead") ?? (policy.Pue is { } pue ? Share.From(pue - 1) : default),
            HostRacks = Racks(map, "racks"),
            SpineRacks = Racks(map, "spine-racks"),
            Reuse = Reuse(map, stock),
        };
        if (!wanted.HostRacks.IsEmpty) wanted = wanted with { Site = new WantedSite(building, power, Standing(map, wanted)) };
        return IsBounded(wanted, map) ? wanted : null;
    }

    /// <summary>Ratios of tiers, from the hosts up.</summary>
    internal static ImmutableArray<Ratio> Ratios(MapNode map) =>
        [.. map.Texts("oversubscription").Select(t => Ratio.TryRead(t.Value, out var r) ? r : Ratio.One)];

    private ImmutableArray<HostDemand> Hosts(MapNode map)
    {
        var hosts = ImmutableArray.CreateBuilder<HostDemand>();
        foreach (var entry in map.Map("hosts")?.Entries ?? [])
        {
            if (entry.Value is MapNode kind && Host(entry.Key, kind) is { } host) hosts.Add(host);
        }
        return [.. hosts.OrderBy(h => h.Name, NaturalOrder.Instance)];
    }

    private HostDemand? Host(ScalarNode name, MapNode map)
    {
        if (map.Whole("count") is not { } count || map.Rate("rate") is not { BitsPerSecond: > 0 } rate) return null;
        var model = map.Text("model") is { } named
            ? Names.Require(
                catalogue.Find<DeviceModel>(named), "device model", named, catalogue.Names<DeviceModel>(), map.SpanOf("model"), findings)
            : null;
        var host = new HostDemand
        {
            Name = name.Value.Trim(),
            Count = count,
            Rate = rate,
            Ports = map.Whole("ports") ?? 1,
            PerRack = map.Whole("per-rack") ?? UsualPerRack,
            Model = model,
            Cards = CardBinder.Bind(map, model, catalogue, findings) ?? [],
        };
        if (host.Model is null && host.Cards.IsEmpty) return host;
        var ports = PortsAt(host);
        if (ports >= host.Ports) return host;
        var what = string.Join(" with ", new[] { host.Model?.Name ?? "a host" }.Concat(host.Cards.Select(c => c.Name).Distinct()));
        findings.Add(ModelFindings.PortsExhausted, map.Span,
            $"{what} has {Numerals.Whole(ports)} ports of {rate} and {Numerals.Whole(host.Ports)} are wanted; "
            + "name other cards, or fewer ports");
        return null;
    }

    private static long PortsAt(HostDemand host)
    {
        var banks = (host.Model?.Banks ?? []).Concat(host.Cards.SelectMany(c => c.Banks));
        return banks.Sum(b => (long)b.Count * b.Cage.Modes.Where(m => m.Rate == host.Rate).Select(m => m.Ways).DefaultIfEmpty(0).Max());
    }

    private ImmutableArray<string> FormFactors(MapNode map)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        var known = standards.FormFactors.Select(f => f.Name).ToList();
        foreach (var text in map.Texts("form-factors"))
        {
            if (Names.Require(standards.FormFactor(text.Value), "form factor", text.Value, known, text.Span, findings) is { } found)
                names.Add(found.Name);
        }
        return [.. names.Distinct().Order(NaturalOrder.Instance)];
    }

    private static BitRate? RateOf(ScalarNode text) =>
        UnitText.TryRead(text.Value, UnitText.Rates, out var gigabits) && gigabits > 0 ? BitRate.FromGigabits(gigabits) : null;

    private ImmutableArray<Rack> Racks(MapNode map, string key)
    {
        var named = new GroupPlacement(building, isPlaceInDoubt, findings).Racks(map, key).Distinct();
        return [.. named.Select(r => building.Racks[r])];
    }

    private ImmutableArray<Reused> Reuse(MapNode map, ImmutableArray<StockItem> stock)
    {
        var counts = new SortedDictionary<string, (ICatalogueItem Item, long Count)>(NaturalOrder.Instance);
        foreach (var text in map.Texts("reuse"))
        {
            var held = stock.Where(s => s.Item.Name == text.Value && s.Length is null).ToList();
            if (devices.Groups.FirstOrDefault(g => g.Name == text.Value) is { } group)
            {
                Add(counts, group.Model, group.Count);
                foreach (var card in group.Cards) Add(counts, card, group.Count);
            }
            else if (held.Count > 0)
            {
                Add(counts, held[0].Item, held.Sum(s => s.Quantity));
            }
            else
            {
                var known = devices.Groups.Select(g => g.Name).Concat(stock.Where(s => s.Length is null).Select(s => s.Item.Name));
                Names.Require<Reused>(null, "group of the plan, or model in stock,", text.Value, known, text.Span, findings);
            }
        }
        return [.. counts.Values.Select(c => new Reused(c.Item, (int)Math.Min(c.Count, int.MaxValue)))];
    }

    /// <summary>What exists in the halls of the racks named and stays where it is: not the hosts asked for, and nothing that is used
    /// anew.</summary>
    private ImmutableArray<StandingDevice> Standing(MapNode map, WantedFabric wanted)
    {
        var used = map.Texts("reuse").Select(t => t.Value).Concat(wanted.Hosts.Select(h => h.Name)).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from device in Enumerable.Range(0, devices.Count)
               let @group = devices.Group(device)
               where @group.IsExisting && !used.Contains(@group.Name)
               let rack = devices.Rack(device)
               where rack is not null && devices.Unit(device) > 0 && wanted.HostRacks.Any(r => r.Hall == rack.Hall)
               select new StandingDevice(@group, rack, devices.Unit(device)),
        ];
    }

    private static void Add(SortedDictionary<string, (ICatalogueItem Item, long Count)> counts, ICatalogueItem item, long count) =>
        counts[item.Name] = (item, counts.GetValueOrDefault(item.Name).Count + count);

    private bool IsBounded(WantedFabric wanted, MapNode map)
    {
        var grown = wanted.Hosts.Sum(h => (double)h.Count * h.Ports) * Math.Pow(1 + wanted.Growth.Value, wanted.Years);
        if (grown <= WantedLanguage.MostPorts) return true;
        findings.Add(ModelFindings.PlanOutOfBounds, map.SpanOf("hosts"),
            $"after {wanted.Years} years the hosts have more than {WantedLanguage.MostPorts} ports; "
            + "ask for fewer hosts, less growth or fewer years");
        return false;
    }
}
