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
    private readonly Dictionary<(string Name, Length? Length, string Type), Count> counts = [];

    private readonly string only;
    private readonly List<PartOrigin> origins = [];

    /// <summary>What is being counted for.</summary>
    private (PartOriginKind Kind, string Name) origin;

    private PartsTally(Plan plan, string only = "")
    {
        this.plan = plan;
        this.only = only;
    }

    /// <summary>The parts list: devices, cards, modules, cables, small parts; each in natural order of names, then by length.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="lines">Its lines between sites.</param>
    /// <param name="plant">Its trunks, which tell what type each cord must be of.</param>
    public static ImmutableArray<PartLine> Of(Plan plan, LinkDesign design, Lazy<LineBook> lines, Lazy<PlantBook> plant)
    {
        var tally = new PartsTally(plan);
        tally.CountAll(design, lines, plant);
        return tally.Lines();
    }

    /// <summary>What one part of the list is needed for: the sum over a length is what its lines say.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="lines">Its lines between sites.</param>
    /// <param name="plant">Its trunks.</param>
    /// <param name="name">Name of the part.</param>
    public static ImmutableArray<PartOrigin> OriginsOf(
        Plan plan, LinkDesign design, Lazy<LineBook> lines, Lazy<PlantBook> plant, string name)
    {
        var tally = new PartsTally(plan, name);
        tally.CountAll(design, lines, plant);
        return
        [
            .. tally.origins.GroupBy(o => (o.Length, o.Kind, o.Name))
                .Select(g => g.First() with { Needed = g.Sum(o => o.Needed), Existing = g.Sum(o => o.Existing) })
                .OrderBy(o => o.Length ?? default).ThenBy(o => o.Kind).ThenBy(o => o.Name, NaturalOrder.Instance),
        ];
    }

    private void CountAll(LinkDesign design, Lazy<LineBook> lines, Lazy<PlantBook> plant)
    {
        CountDevices();
        CountModules(design);
        CountCables(design);
        CountFarCords(design);
        CountTrunks(design.Trunks);
        if (!plan.Trunks.IsEmpty) CountPatchCords(design, plant.Value);
        if (!plan.Lines.IsEmpty) CountLines(lines.Value);
        if (!plan.LinePorts.IsEmpty) CountLineCords(lines.Value);
    }

    private void CountDevices()
    {
        foreach (var group in plan.Devices.Groups)
        {
            var existing = group.IsExisting ? group.Count : 0;
            origin = (PartOriginKind.Group, group.Name);
            Add(group.Model, null, group.Count, existing);
            foreach (var card in group.Cards) Add(card, null, group.Count, existing);
        }
    }

    /// <summary>One module a cage, however many links share it.</summary>
    private void CountModules(LinkDesign design)
    {
        origin = (PartOriginKind.Cages, "");
        foreach (var (module, count) in design.ModulesInCages()) Add(module, null, count, 0);
    }

    private void CountCables(LinkDesign design)
    {
        foreach (var (solution, statement, cables, links) in design.CablesBySolution())
        {
            var existing = plan.Statements[statement].IsExisting ? cables : 0;
            origin = (PartOriginKind.Links, plan.Statements[statement].Name);
            if (solution is { Patching.IsEmpty: true, Cable: not CordModel { IsPlaceholder: true } })
                Add(solution.Cable, solution.Length, cables, existing,
                    PlantBook.OverOneCord(plan.Standards, solution)?.CordTypes[0] ?? "");
            foreach (var adapter in solution.Adapters) Add(adapter, null, links, 0);
            if (solution.Attenuator is { } attenuator)
                Add(attenuator, null, links * solution.Parts.Where(p => ReferenceEquals(p.Item, attenuator)).Sum(p => p.Quantity), 0);
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
            origin = (PartOriginKind.Links, statement.Name);
            Add(far, solution.FarLength ?? solution.Length, 1, statement.IsExisting ? 1 : 0);
        }
    }

    private void CountTrunks(TrunkWays ways)
    {
        foreach (var trunk in plan.Trunks)
        {
            var existing = trunk.IsExisting ? trunk.Count : 0;
            origin = (PartOriginKind.Trunk, trunk.Name);
            for (var number = 0; number < trunk.Count; number++)
                if (ways.Of(trunk, number) is { } length)
                    Add(trunk.Cable, length, 1, trunk.IsExisting ? 1 : 0, TrunkFronts.CableType(trunk));
            foreach (var isFar in new[] { false, true })
            {
                if (trunk.CassetteAt(isFar) is { } cassette)
                    Add(cassette, null, trunk.Count, existing, TrunkFronts.CassetteType(trunk, isFar));
                else if (TrunkFronts.Adapter(plan.Catalogue, trunk, isFar) is { } adapter) Add(adapter, null, trunk.Count, existing);
            }
        }
    }

    /// <summary>Cords of patched links, each of the type that makes transmitters meet receivers there; those that links of one cable
    /// share are counted once.</summary>
    private void CountPatchCords(LinkDesign design, PlantBook plant)
    {
        var shared = new HashSet<(int Cable, int Joint)>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (design.SolutionOf(link) is not { Patching.IsEmpty: false } solution) continue;
            var statement = plan.Statements[plan.Links.Statement(link)];
            origin = (PartOriginKind.Links, statement.Name);
            var existing = statement.IsExisting ? 1 : 0;
            for (var joint = 0; joint < solution.Patching.Length; joint++)
            {
                var cord = solution.Patching[joint];
                if (cord.Links > 1 && !shared.Add((design.CableOf(link), joint))) continue;
                // Fan-out cords are of one type only.
                var type = cord.Kind is PatchKind.Array or PatchKind.Duplex ? plant.WayOf(link)?.Polarity.CordTypes[joint] : null;
                Add(cord.Cord, cord.Length, 1, existing, type ?? "");
            }
        }
    }

    private void CountLines(LineBook lines)
    {
        foreach (var (line, route) in lines.Lines.SelectMany(l => l.Routes.Select(r => (l.Statement.Name, r))))
        {
            origin = (PartOriginKind.Line, line);
            var channels = route.Answer.Question.Channels.Channels.Length;
            foreach (var (part, count) in LineParts.Of(plan.Catalogue, route.Answer.Design, channels, route.Terminals))
                Add(part, null, count, 0);
        }
    }

    private void CountLineCords(LineBook lines)
    {
        foreach (var cord in lines.Cords)
        {
            origin = (PartOriginKind.Line, plan.Lines[cord.Line].Name);
            if (cord is { Cord: { } item, Ordered: { } length }) Add(item, length, 1, 0);
        }
    }

    private void Add(ICatalogueItem item, Length? length, long needed, long existing, string type = "")
    {
        if (only.Length > 0)
        {
            if (item.Name == only) origins.Add(new PartOrigin(origin.Kind, origin.Name, length, needed, existing));
            return;
        }
        var before = counts.GetValueOrDefault((item.Name, length, type)) ?? new Count(item, 0, 0);
        counts[(item.Name, length, type)] = new Count(item, before.Needed + needed, before.Existing + existing);
    }

    /// <summary>Stock says no types: it serves the lines of an item one after the other.</summary>
    private ImmutableArray<PartLine> Lines()
    {
        var stock = plan.Stock.GroupBy(s => (s.Item.Name, s.Length)).ToDictionary(g => g.Key, g => g.Sum(s => s.Quantity));
        var lines = ImmutableArray.CreateBuilder<PartLine>(counts.Count);
        foreach (var (key, count) in counts
            .OrderBy(c => KindRank(c.Value.Item)).ThenBy(c => c.Key.Name, NaturalOrder.Instance).ThenBy(c => c.Key.Length ?? default)
            .ThenBy(c => c.Key.Type, StringComparer.Ordinal))
        {
            var line = Line(count, key.Length, key.Type, stock.GetValueOrDefault((key.Name, key.Length)));
            if (line.FromStock > 0) stock[(key.Name, key.Length)] -= line.FromStock;
            lines.Add(line);
        }
        return lines.MoveToImmutable();
    }

    private PartLine Line(Count count, Length? length, string type, long inStock)
    {
        var item = count.Item;
        var inUse = count.Needed - count.Existing;
        var level = SpareBook.Of(plan, item, count.Needed)?.Count ?? 0;
        var spares = Math.Max(SpareParts.For(item, length, inUse, plan.Policy.Spares), level);
        var price = item is CableItem cable && length is { } metres ? cable.PriceOf(metres) : item.Price;
        return new PartLine(item, length, count.Needed, count.Existing, Math.Min(inUse + spares, inStock), spares, price, PowerOf(item))
        {
            Type = type,
        };
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
