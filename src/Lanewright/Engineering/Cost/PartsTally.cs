using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Plant;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Cost;

/// <summary>Counts what a plan uses, what is there, and what has to be bought.</summary>
public sealed class PartsTally
{
    private readonly Plan plan;
    // Names are unique in a catalogue and far cheaper to compare than whole items.
    private readonly Dictionary<(string Name, Length? Length), Count> counts = [];

    private readonly string only;
    private readonly List<PartOrigin> origins = [];

    private PartsTally(Plan plan, string only = "")
    {
        this.plan = plan;
        this.only = only;
    }

    /// <summary>The parts list: devices, cards, modules, cables, small parts; each in natural order of names, then by length.</summary>
    public static ImmutableArray<PartLine> Of(Plan plan, LinkDesign design, Lazy<LineBook> lines)
    {
        var tally = new PartsTally(plan);
        tally.CountAll(design, lines);
        return tally.Lines();
    }

    /// <summary>What one part of the list is needed for: the sum over a length is what its line says.</summary>
    public static ImmutableArray<PartOrigin> OriginsOf(Plan plan, LinkDesign design, Lazy<LineBook> lines, string name)
    {
        var tally = new PartsTally(plan, name);
        tally.CountAll(design, lines);
        return
        [
            .. tally.origins.GroupBy(o => (o.Length, o.Kind, o.Name))
                .Select(g => g.First() with { Needed = g.Sum(o => o.Needed), Existing = g.Sum(o => o.Existing) })
                .OrderBy(o => o.Length ?? default).ThenBy(o => o.Kind).ThenBy(o => o.Name, NaturalOrder.Instance),
        ];
    }

    private void CountAll(LinkDesign design, Lazy<LineBook> lines)
    {
        CountDevices();
        CountModules(design);
        CountCables(design);
        CountFarCords(design);
        CountTrunks(design.Trunks);
        if (!plan.Lines.IsEmpty) CountLines(lines.Value);
        if (!plan.LinePorts.IsEmpty) CountLineCords(lines.Value);
    }

    private void CountDevices()
    {
        foreach (var group in plan.Devices.Groups)
        {
            var existing = group.IsExisting ? group.Count : 0;
            var (kind, name) = (PartOriginKind.Group, group.Name);
            Add(group.Model, null, group.Count, existing, kind, name);
            foreach (var card in group.Cards) Add(card, null, group.Count, existing, kind, name);
        }
    }

    /// <summary>One module a cage, however many links share it.</summary>
    private void CountModules(LinkDesign design)
    {
        foreach (var (module, count) in design.ModulesInCages()) Add(module, null, count, 0, PartOriginKind.Cages, "");
    }

    private void CountCables(LinkDesign design)
    {
        foreach (var (solution, statement, cables, links) in design.CablesBySolution())
        {
            var existing = plan.Statements[statement].IsExisting ? cables : 0;
            var (kind, name) = (PartOriginKind.Links, plan.Statements[statement].Name);
            foreach (var cord in solution.Patching)
            {
                var each = cord.Links > 1 ? cables : links;
                Add(cord.Cord, cord.Length, each, plan.Statements[statement].IsExisting ? each : 0, kind, name);
            }
            if (solution is { Patching.IsEmpty: true, Cable: not CordModel { IsPlaceholder: true } })
                Add(solution.Cable, solution.Length, cables, existing, kind, name);
            foreach (var adapter in solution.Adapters) Add(adapter, null, links, 0, kind, name);
            if (solution.Attenuator is { } attenuator)
            {
                var each = solution.Parts.Where(p => ReferenceEquals(p.Item, attenuator)).Sum(p => p.Quantity);
                Add(attenuator, null, links * each, 0, kind, name);
            }
        }
    }

    /// <summary>Where fan-outs meet in couplers: one at the far side for each cage split there, however many the near side has.</summary>
    private void CountFarCords(LinkDesign design)
    {
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (plan.Links.ToPort(link).Part != 0) continue;
            if (design.SolutionOf(link) is not { FarCord: { } far, Patching.IsEmpty: true } solution) continue;
            var statement = plan.Statements[plan.Links.Statement(link)];
            Add(far, solution.FarLength ?? solution.Length, 1, statement.IsExisting ? 1 : 0, PartOriginKind.Links, statement.Name);
        }
    }

    private void CountTrunks(TrunkWays ways)
    {
        foreach (var trunk in plan.Trunks)
        {
            var existing = trunk.IsExisting ? trunk.Count : 0;
            var (kind, name) = (PartOriginKind.Trunk, trunk.Name);
            for (var number = 0; number < trunk.Count; number++)
                if (ways.Of(trunk, number) is { } length) Add(trunk.Cable, length, 1, trunk.IsExisting ? 1 : 0, kind, name);
            var cassettes = (long)trunk.CassettesEach;
            if (trunk.Cassette is { } cassette) Add(cassette, null, cassettes * trunk.Count, cassettes * existing, kind, name);
        }
    }

    private void CountLines(LineBook lines)
    {
        foreach (var (line, route) in lines.Lines.SelectMany(l => l.Routes.Select(r => (l.Statement.Name, r))))
        {
            var channels = route.Answer.Question.Channels.Channels.Length;
            foreach (var (part, count) in LineParts.Of(plan.Catalogue, route.Answer.Design, channels, route.Terminals))
                Add(part, null, count, 0, PartOriginKind.Line, line);
        }
    }

    private void CountLineCords(LineBook lines)
    {
        foreach (var cord in lines.Cords)
            if (cord is { Cord: { } item, Ordered: { } length }) Add(item, length, 1, 0, PartOriginKind.Line, plan.Lines[cord.Line].Name);
    }

    private void Add(ICatalogueItem item, Length? length, long needed, long existing, PartOriginKind kind, string name)
    {
        if (only.Length > 0)
        {
            if (item.Name == only) origins.Add(new PartOrigin(kind, name, length, needed, existing));
            return;
        }
        var before = counts.GetValueOrDefault((item.Name, length)) ?? new Count(item, 0, 0);
        counts[(item.Name, length)] = new Count(item, before.Needed + needed, before.Existing + existing);
    }

    private ImmutableArray<PartLine> Lines()
    {
        var stock = plan.Stock.GroupBy(s => (s.Item.Name, s.Length)).ToDictionary(g => g.Key, g => g.Sum(s => s.Quantity));
        var lines = counts.Select(c => Line(c.Value, c.Key.Length, stock.GetValueOrDefault(c.Key)));
        return [.. lines.OrderBy(l => KindRank(l.Item)).ThenBy(l => l.Item.Name, NaturalOrder.Instance).ThenBy(l => l.Length ?? default)];
    }

    private PartLine Line(Count count, Length? length, long inStock)
    {
        var item = count.Item;
        var inUse = count.Needed - count.Existing;
        var level = SpareBook.Of(plan, item, count.Needed)?.Count ?? 0;
        var spares = Math.Max(SpareParts.For(item, length, inUse, plan.Policy.Spares), level);
        var price = item is CableItem cable && length is { } metres ? cable.PriceOf(metres) : item.Price;
        return new PartLine(item, length, count.Needed, count.Existing, Math.Min(inUse + spares, inStock), spares, price, PowerOf(item));
    }

    private static Watts PowerOf(ICatalogueItem item) => item switch
    {
        DeviceModel device => device.Maximum,
        CardModel card => card.Maximum,
        ModuleModel module => module.Power,
        SundryModel sundry => sundry.Power,
        AssemblyModel assembly => assembly.NearPower + (assembly.FarPower * assembly.Legs),
        _ => default,
    };

    private static int KindRank(ICatalogueItem item) => item switch
    {
        DeviceModel => 0,
        CardModel => 1,
        ModuleModel => 2,
        AssemblyModel => 3,
        CordModel => 4,
        _ => 5,
    };

    private sealed record Count(ICatalogueItem Item, long Needed, long Existing);
}
