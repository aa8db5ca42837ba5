using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Writes a priced design out as an option.</summary>
internal sealed class OptionMaker(FabricDemand demand, PricedDesign priced)
{
    private readonly FabricDesign design = priced.Design;
    private readonly FabricLayout layout = priced.Start.Fabric.Layout;

    /// <summary>The option.</summary>
    /// <param name="bound">What no design of its shape goes below.</param>
    /// <param name="lanes">Judges what still serves at the next lane rate.</param>
    public FabricOption Option(Money bound, NextLanes lanes)
    {
        var bill = priced.Start.Bill;
        var (modules, cables) = (bill.Parts<ModuleModel>(), bill.Parts<CableItem>());
        var hosts = demand.CountsIn(0);
        return new FabricOption
        {
            Leaves = CountOf(SwitchRole.Leaf) + CountOf(SwitchRole.Box),
            Spines = CountOf(SwitchRole.Spine) + CountOf(SwitchRole.Aggregation),
            Cores = CountOf(SwitchRole.Core),
            Hosts = hosts.Sum(),
            HostPorts = demand.Hosts.Select((h, k) => h.Demand.Ports * hosts[k]).Sum(),
            FabricLinks = (int)FabricTallies().Sum(t => t.Lines.Sum(l => l.Links)),
            Modules = modules.Sum(m => m.Count),
            Cables = cables.Sum(c => c.Count),
            Cost = priced.Cost,
            CostOverYears = priced.CostOverYears,
            EnergyOverYears = priced.Energy,
            Watts = Watts.From(priced.Start.TypicalWatts),
            RackUnits = priced.Start.RackUnits,
            LowerBound = bound,
            Gap = priced.Total == Money.Zero ? default : Share.From((double)((priced.Total - bound).Hundredths / priced.Total.Hundredths)),
            Switches = Switches(),
            Uplinks = Uplinks(),
            SwitchesByModel = [.. bill.Parts<DeviceModel>(), .. bill.Parts<CardModel>()],
            ModulesByModel = modules,
            CablesByModel = cables,
            SmallParts = bill.Parts<SundryModel>(),
            Room = new PortBook(demand, design).Room(),
            Draws = Draws(),
            Years = priced.Years,
            NextLaneRate = lanes.Of(priced.Start.Tallies.SelectMany(t => t.Lines)),
            Needs = Needs(demand.Wanted),
            Layout = layout,
        };
    }

    /// <summary>What the design asks for.</summary>
    /// <param name="wanted">The wishes whose ratios it is held against.</param>
    public FabricNeeds Needs(WantedFabric wanted) => new()
    {
        Shape = design.Shape,
        Tiers = design.Tiers,
        Planes = design.Planes,
        Hosts = demand.CountsIn(0).Sum(),
        Oversubscription = Ratios(0),
        OversubscriptionLeft = Ratios(wanted.Survive),
        Survives = Math.Max(0, Survives(wanted)),
        FormFactors = FormFactors(),
        UplinkRates = [.. Uplinks().Select(u => u.Rate).Concat(PeerRates()).Distinct().Order()],
        RackUnits = priced.End.RackUnits,
        HostRacks = demand.Hall.FirstRack[^1],
        PortsMeet = design.Planes == 1 || design.PeerLinks > 0,
        IsInNamedRacks = !demand.Hall.IsStandard,
        RackPower = Watts.From(priced.End.RackWatts),
        RackWeight = Mass.FromKilograms(priced.End.RackKilograms),
        Price = priced.Cost.Total,
        PriceOverYears = priced.Total,
        Fits = priced.End.Fault.Length == 0,
        Name = design.Name,
    };

    private int CountOf(SwitchRole role) => layout.Groups.Where(g => g.Role == role).Sum(g => g.Places.Length);

    private IEnumerable<LinkTally> FabricTallies() =>
        priced.Start.Tallies.Where((_, i) => layout.Groups[layout.Links[i].From.Devices[0].Group].Role != SwitchRole.Host);

    private ImmutableArray<SwitchUse> Switches()
    {
        var book = new PortBook(demand, design);
        var used = new long[layout.Groups.Length];
        foreach (var set in layout.Links)
        {
            var (from, to) = (set.From.Devices.Sum(r => r.Count), set.To.Devices.Sum(r => r.Count));
            foreach (var run in set.From.Devices) used[run.Group] += (long)run.Count * (set.RunLength > 0 ? 1 : to * set.Parallel);
            foreach (var run in set.To.Devices) used[run.Group] += set.RunLength > 0 ? from : (long)run.Count * from * set.Parallel;
        }
        var end = priced.End.Fabric.Layout.Groups.ToDictionary(g => g.Name, g => g.Places.Length);
        return
        [
            .. layout.Groups
                .Select((g, i) => (Group: g, Used: used[i]))
                .Where(g => g.Group.Role != SwitchRole.Host)
                .GroupBy(g => (g.Group.Role, g.Group.Model.Name, g.Group.Cards.Length, Card: g.Group.Cards.FirstOrDefault()?.Name))
                .Select(same =>
                {
                    var group = same.First().Group;
                    var (count, inUse) = (same.Sum(g => g.Group.Places.Length), (int)same.Sum(g => g.Used));
                    var open = same.Sum(g => g.Group.Places.Length * book.Openable(g.Group.Role, KindOf(g.Group)));
                    return new SwitchUse(
                        group.Model, group.Cards, group.Role, count, same.Sum(g => end[g.Group.Name]), inUse, Math.Max(0, open - inUse));
                })
                .OrderBy(s => s.Role),
        ];
    }

    /// <summary>What draws power at the start: switches with their cards, then what sits in cages, hosts' included.</summary>
    private ImmutableArray<FabricDraw> Draws()
    {
        var boxes = layout.Groups.Where(g => g.Role != SwitchRole.Host).SelectMany(g => g.Cards
            .Select(c => new FabricDraw(c.Name, g.Places.Length, c.Typical))
            .Prepend(new FabricDraw(g.Model.Name, g.Places.Length, g.Model.Typical)));
        var inCages = priced.Start.Tallies.SelectMany(t => t.Lines).SelectMany(InCages);
        return
        [
            .. boxes.Concat(inCages).GroupBy(d => (d.What, d.Each))
                .Select(g => new FabricDraw(g.Key.What, g.Sum(d => d.Count), g.Key.Each)).Where(d => d.Count > 0 && d.Each.Value > 0),
        ];
    }

    private static IEnumerable<FabricDraw> InCages(TallyLine line)
    {
        if (line.Solution.Cable is AssemblyModel cable)
        {
            // A fan-out has its near end in the cage that is split.
            yield return new FabricDraw(cable.Name + ", near end", line.Cables, cable.NearPower);
            yield return new FabricDraw(cable.Name + ", far end", line.FromCages + line.ToCages - line.Cables, cable.FarPower);
        }
        if (line.Solution.FromModule is { } from) yield return new FabricDraw(from.Name, line.FromCages, from.Power);
        if (line.Solution.ToModule is { } to) yield return new FabricDraw(to.Name, line.ToCages, to.Power);
    }

    /// <summary>The kind of host a group of leaves serves; 0 for all others.</summary>
    private int KindOf(FabricGroup group)
    {
        var index = layout.Groups.IndexOf(group);
        var edge = layout.Links.FirstOrDefault(l => l.RunLength > 0 && l.To.Devices[0].Group == index);
        return edge?.From.Devices[0].Group ?? 0;
    }

    private ImmutableArray<TierUplinks> Uplinks()
    {
        if (design.Upper is not { } upper) return [];
        var tiers = ImmutableArray.CreateBuilder<TierUplinks>();
        for (var kind = 0; kind < demand.Hosts.Length; kind++)
        {
            var leaf = design.Leaves[kind];
            var links = leaf.BlocksFor(demand.CountsIn(0)[kind]) * demand.Hosts[kind].Demand.Ports * upper.Count * leaf.Parallel;
            tiers.Add(new TierUplinks(0, demand.Hosts.Length == 1 ? "" : demand.Hosts[kind].Demand.Name, leaf.UpPorts.Mode.Rate,
                leaf.UpPorts.Mode, upper.Down[kind].Mode, upper.Count * leaf.Parallel, upper.Count, leaf.Parallel, links,
                LeafRatio(kind, 0)));
        }
        if (design.Core is not { } core) return tiers.ToImmutable();
        var pods = new PodPlan(demand, design).PresentFor(demand.CountsIn(0)).Length;
        tiers.Add(new TierUplinks(1, "", upper.Up.Mode.Rate, upper.Up.Mode, core.Down[0].Mode, core.Count * upper.Parallel, core.Count,
            upper.Parallel, pods * design.Planes * upper.Count * core.Count * upper.Parallel, PodRatio(0)));
        return tiers.ToImmutable();
    }

    private Ratio LeafRatio(int kind, int isOut)
    {
        if (design.Upper is not { } upper) return Ratio.One;
        var leaf = design.Leaves[kind];
        return UplinkRule.Achieved(
            leaf.HostsPerLeaf, demand.Hosts[kind].Demand.Rate, (upper.Count - isOut) * leaf.Parallel, leaf.UpPorts.Mode.Rate);
    }

    private Ratio PodRatio(int isOut) => Enumerable.Range(0, demand.Hosts.Length).Select(k => PodRatio(k, isOut)).Max();

    private Ratio PodRatio(int kind, int isOut) => design is { Upper: { } upper, Core: { } core }
        ? UplinkRule.Achieved(
            PodPorts(kind), design.Leaves[kind].UpPorts.Mode.Rate, (core.Count - isOut) * upper.Parallel, upper.Up.Mode.Rate)
        : Ratio.One;

    private long PodPorts(int kind) =>
        (long)design.Leaves[kind].BlocksPerPod * (demand.Hosts[kind].Demand.Ports / design.Planes) * design.Leaves[kind].Parallel;

    private ImmutableArray<Ratio> Ratios(int isOut)
    {
        if (design.Upper is null) return [];
        var leaves = Enumerable.Range(0, demand.Hosts.Length).Select(k => LeafRatio(k, isOut)).Max();
        return design.Core is null ? [leaves] : [leaves, PodRatio(isOut)];
    }

    private int Survives(WantedFabric wanted)
    {
        if (design.Upper is not { } upper) return design.Planes - 1;
        var kinds = Enumerable.Range(0, demand.Hosts.Length).ToList();
        var leaves = kinds.Min(k => UplinkRule.Survives(design.Leaves[k].HostsPerLeaf, demand.Hosts[k].Demand.Rate, upper.Count,
            design.Leaves[k].Parallel, design.Leaves[k].UpPorts.Mode.Rate, wanted.OversubscriptionOf(0)));
        if (design.Core is not { } core) return leaves;
        var pods = kinds.Min(k => UplinkRule.Survives(PodPorts(k), design.Leaves[k].UpPorts.Mode.Rate, core.Count,
            upper.Parallel, upper.Up.Mode.Rate, wanted.OversubscriptionOf(1)));
        return Math.Min(leaves, pods);
    }

    private ImmutableArray<string> FormFactors()
    {
        var uses = design.Leaves.Select(l => l.HostPorts).ToList();
        if (design.Upper is not null || design.PeerLinks > 0) uses.AddRange(design.Leaves.Select(l => l.UpPorts));
        uses.AddRange(design.Upper?.Down ?? []);
        if (design is { Upper: { } upper, Core: { } core }) uses.AddRange([upper.Up, core.Down[0]]);
        return [.. uses.Select(u => u.Cage.FormFactor.Name).Distinct().Order(NaturalOrder.Instance)];
    }

    private IEnumerable<BitRate> PeerRates() => design.PeerLinks > 0 ? [design.Leaves[0].UpPorts.Mode.Rate] : [];
}
