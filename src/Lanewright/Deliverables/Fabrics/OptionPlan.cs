using System.Collections.Immutable;
using System.Text;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>Writes an option as a plan, which the same rules judge as one that a person wrote.</summary>
public sealed class OptionPlan
{
    private readonly Plan plan;
    private readonly FabricOption option;
    private readonly Func<string, string> refer;
    private readonly TextWriter writer;
    private readonly PlacesText places;
    private readonly ImmutableArray<ImmutableArray<PlacedGroup>> groups;

    private OptionPlan(Plan plan, FabricOption option, Func<string, string> refer, TextWriter writer)
    {
        this.plan = plan;
        this.option = option;
        this.refer = refer;
        this.writer = writer;
        places = new PlacesText(plan, option.Layout.Racks, option.Layout.IsStandardHall, writer);
        groups = [.. option.Layout.Groups.Select(g => PlacedGroup.Of(g, rack => string.Join(' ', places.FeedsOf(rack))))];
    }

    /// <summary>Writes it.</summary>
    /// <param name="plan">The plan the question was asked in: its catalogue, its policy and what stays.</param>
    /// <param name="option">The option.</param>
    /// <param name="refer">How a file of that plan is called from where this one will stand.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Plan plan, FabricOption option, Func<string, string> refer, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 14, leaveOpen: true) { NewLine = "\n" };
        new OptionPlan(plan, option, refer, writer).Write();
    }

    private void Write()
    {
        Head();
        Policy();
        places.Write();
        Labels();
        Devices();
        if (!option.Layout.Links.IsEmpty) writer.WriteLine("\nlinks:");
        foreach (var links in option.Layout.Links) Links(links);
        Demands();
        Stock();
    }

    private void Head()
    {
        writer.WriteLine($"# {FabricShapes.Title(option.Shape)} for {Numerals.Grouped(option.Hosts)} hosts, "
            + "as 'lanewright size' proposed it: "
            + $"{Numerals.Grouped(option.Price.Units, 2)} to buy.");
        foreach (var use in option.Switches) writer.WriteLine("# " + FabricWords.Switches(use));
        foreach (var tier in option.Uplinks) writer.WriteLine($"# tier {Numerals.Whole(tier.Tier + 1)}: {FabricWords.Uplinks(tier)}");
        if (!option.Needs.PortsMeet)
            writer.WriteLine($"# {FabricWords.Meeting(option)}: what a port of one sends to a port of another, hosts carry over.");
        foreach (var line in Apart()) writer.WriteLine("# " + line);
        writer.WriteLine("# What is left open here is decided by 'lanewright build': media, modules, cables and their lengths.");
        writer.WriteLine("lanewright: 1");
        writer.WriteLine($"name: {PlanText.Name($"{plan.Name}-{FabricShapes.Word(option.Shape)}")}");
        writer.WriteLine($"title: {PlanText.Name($"{plan.Title}: {FabricShapes.Title(option.Shape)}")}");
        if (plan.Revision.Length > 0) writer.WriteLine($"revision: {PlanText.Name(plan.Revision)}");
        if (plan.Date.Length > 0) writer.WriteLine($"date: {PlanText.Name(plan.Date)}");
        writer.WriteLine($"currency: {PlanText.Name(plan.Currency)}");
        if (!plan.CatalogueFiles.IsEmpty) writer.WriteLine($"catalogue: {PlanText.Names([.. plan.CatalogueFiles.Select(refer)])}");
        if (!plan.StandardsFiles.IsEmpty) writer.WriteLine($"standards: {PlanText.Names([.. plan.StandardsFiles.Select(refer)])}");
    }

    /// <summary>Where this plan says less, or comes to more, than the plan it was asked in.</summary>
    private IEnumerable<string> Apart()
    {
        yield return "Hosts are 'existing: yes': the question was what fabric to buy; hosts with their cards are not part of its price.";
        if (!plan.Devices.Groups.IsEmpty || !plan.Demands.IsEmpty)
            yield return (option.Layout.Standing.IsEmpty ? "Devices, links, demands and stock" : "Other devices, links, demands and stock")
                + " of the plan it was asked in are not repeated here.";
        if (!option.Layout.Standing.IsEmpty)
            yield return "What exists in the hall and stays where it is stands here without its links and modules.";
        if (option.Layout.IsStandardHall)
        {
            if (!plan.Building.Racks.IsEmpty || !plan.Power.IsEmpty)
                yield return "Its hall is laid out by rule, since 'wanted' names no racks: halls and feeds of the plan do not hold here.";
            yield break;
        }
        if (plan.Policy.SpareLevel is not null)
            yield return "Spares by the spare-level come on top of that price.";
    }

    private void Policy()
    {
        // The wishes are not repeated, but what was promised to the hosts holds for what is built.
        var policy = option.Uplinks.IsEmpty || plan.Wanted is not { } wanted ? plan.Policy : plan.Policy with
        {
            Oversubscription = wanted.Oversubscription.IsEmpty ? [Ratio.One] : wanted.Oversubscription,
        };
        var lines = PolicyText.Lines(policy, plan.Standards).ToList();
        if (lines.Count == 0) return;
        writer.WriteLine("\npolicy:");
        foreach (var line in lines) writer.WriteLine("  " + line);
    }

    /// <summary>The sheet of labels, where it is not the usual one.</summary>
    private void Labels()
    {
        var (sheet, usual) = (plan.Labels, LabelBinder.Bind(null, plan.Standards));
        if (sheet with { Span = usual.Span } == usual) return;
        writer.WriteLine($"\nlabels: {{ page: {PlanText.Name(sheet.Page)}, width: {PlanText.Length(sheet.Width)}, "
            + $"height: {PlanText.Length(sheet.Height)}, columns: {Numerals.Whole(sheet.Columns)}, rows: {Numerals.Whole(sheet.Rows)},");
        writer.WriteLine($"  left: {PlanText.Length(sheet.Left)}, top: {PlanText.Length(sheet.Top)}, "
            + $"gap-across: {PlanText.Length(sheet.GapAcross)}, gap-down: {PlanText.Length(sheet.GapDown)} }}");
    }

    private void Devices()
    {
        writer.WriteLine("\ndevices:");
        for (var i = 0; i < groups.Length; i++)
        {
            var group = option.Layout.Groups[i];
            foreach (var placed in groups[i]) Device(group, placed, places.FeedsOf(placed.Racks[0]));
        }
        foreach (var group in option.Layout.Standing.GroupBy(d => d.Group)) Standing(group.Key, [.. group]);
    }

    /// <summary>What stands in the hall already and stays: it takes units, weighs and draws there.</summary>
    private void Standing(DeviceGroup group, ImmutableArray<StandingDevice> devices)
    {
        var name = groups.SelectMany(g => g).Any(g => IsLike(g.Name, group.Name)) ? "standing-" + group.Name : group.Name;
        var standing = new FabricGroup(name, SwitchRole.Host, group.Model, group.Cards, devices.Length,
            [.. devices.Select(d => new FabricPlace(d.Rack, d.Unit))]);
        foreach (var placed in PlacedGroup.Of(standing, rack => string.Join(' ', FeedsOf(rack))))
            Device(standing, placed, FeedsOf(placed.Racks[0]));

        ImmutableArray<string> FeedsOf(Rack rack)
        {
            var own = places.FeedsOf(rack).Where(group.Feeds.Contains).ToImmutableArray();
            return own.IsEmpty ? places.FeedsOf(rack) : own;
        }
    }

    /// <summary>Devices take the names of their groups with a number, so that neither of two names may begin with the other.</summary>
    private static bool IsLike(string one, string other) =>
        one.StartsWith(other, StringComparison.Ordinal) || other.StartsWith(one, StringComparison.Ordinal);

    private void Device(FabricGroup group, PlacedGroup placed, ImmutableArray<string> from)
    {
        var cards = group.Cards.IsEmpty ? "" : $", cards: {PlanText.Names([.. Cards(group.Cards)])}";
        var perRack = placed.PerRack > 1 ? $", per-rack: {Numerals.Whole(placed.PerRack)}" : "";
        var step = placed.PerRack > 1 && placed.Step != group.Model.Units ? $", step: {Numerals.Whole(placed.Step)}" : "";
        var existing = group.Role == SwitchRole.Host ? ", existing: yes" : "";
        writer.WriteLine($"  {PlanText.Name(placed.Name)}:");
        writer.WriteLine($"    {{ model: {PlanText.Name(group.Model.Name)}{cards}, count: {Numerals.Whole(placed.Count)}{existing},");
        var racks = PlanText.Names([.. PlacesText.Ranges(placed.Racks)]);
        var feeds = from.IsEmpty ? "" : $", feeds: {PlanText.Names(from)}";
        writer.WriteLine($"      racks: {racks}{perRack}, unit: {Numerals.Whole(placed.Unit)}{step}{feeds} }}");
    }

    /// <summary>Cards in slot order, those alike that follow one another written once.</summary>
    private static IEnumerable<string> Cards(ImmutableArray<CardModel> cards)
    {
        for (var at = 0; at < cards.Length;)
        {
            var alike = cards.Skip(at).TakeWhile(c => c.Name == cards[at].Name).Count();
            yield return alike == 1 ? cards[at].Name : $"{cards[at].Name} x{Numerals.Whole(alike)}";
            at += alike;
        }
    }

    private void Links(FabricLinks links)
    {
        writer.WriteLine($"  {PlanText.Name(links.Name)}:");
        writer.WriteLine($"    from: {End(links.From)}");
        writer.WriteLine($"    to: {End(links.To)}");
        writer.WriteLine($"    rate: {links.Rate}");
        writer.WriteLine(links.RunLength > 0
            ? $"    pattern: in-runs\n    from-run: {Numerals.Whole(links.RunLength)}"
            : "    pattern: each-to-each");
        if (links.Parallel > 1) writer.WriteLine($"    count: {Numerals.Whole(links.Parallel)}");
    }

    /// <summary>Any traffic of hosts that keep to what the wanted ratios promise them and to how full a link may be, so that the fabric is
    /// drawn with its load and held against them.</summary>
    private void Demands()
    {
        if (option.Layout.Links.IsEmpty || plan.Wanted is not { } wanted) return;
        var ratio = Enumerable.Range(0, option.Tiers - 1).Select(wanted.OversubscriptionOf).Aggregate(Ratio.One, (all, tier) => all * tier);
        var kinds = wanted.Hosts
            .Select(h => (Host: h, Groups: groups.Where((_, i) => option.Layout.Groups[i].Name == h.Name && IsHost(i)).SelectMany(g => g)))
            .Select(h => (h.Host, Names: h.Groups.Select(g => g.Name).ToImmutableArray(),
                Rate: Math.Floor((h.Host.Rate * h.Host.Ports).Gigabits * plan.Policy.MostUtilisation.Value * ratio.Denominator
                    / ratio.Numerator)))
            .Where(h => !h.Names.IsEmpty && h.Rate >= 1)
            .ToList();
        if (kinds.Count == 0) return;
        writer.WriteLine($"\n# Any traffic of hosts that send and take what the wanted oversubscription, {ratio} in all, "
            + "and the most utilisation leave them.");
        writer.WriteLine("demands:");
        foreach (var (host, names, rate) in kinds)
        {
            var name = kinds.Count == 1 ? "any-traffic" : "any-traffic-" + host.Name;
            writer.WriteLine($"  {PlanText.Name(name)}: {{ kind: hose, among: {PlanText.Names(names)}, rate: {Numerals.Plain(rate)}G }}");
        }

        bool IsHost(int group) => option.Layout.Groups[group].Role == SwitchRole.Host;
    }

    private string End(FabricEnd end) =>
        $"{{ of: {PlanText.Names([.. end.Devices.SelectMany(Names)])}, ports: '{PlanText.Ranges(end.Ports.Numbers)}', "
        + $"breakout: {end.Mode} }}";

    /// <summary>A run of an option's group by the names of the plan's groups.</summary>
    private IEnumerable<string> Names(FabricRun run)
    {
        foreach (var placed in groups[run.Group])
        {
            var from = Math.Max(run.First, placed.First) - placed.First;
            var to = Math.Min(run.First + run.Count, placed.First + placed.Count) - placed.First;
            if (from >= to) continue;
            if (from == 0 && to == placed.Count) yield return placed.Name;
            else yield return $"{placed.Name}-{PlanText.Ranges(Enumerable.Range(from + 1, to - from))}";
        }
    }

    /// <summary>What exists and stays is on hand: used first and paid nothing for.</summary>
    private void Stock()
    {
        if (plan.Wanted is not { Reuse: { IsEmpty: false } reuse }) return;
        writer.WriteLine("\nstock:");
        foreach (var item in reuse)
            writer.WriteLine($"  - {{ model: {PlanText.Name(item.Item.Name)}, quantity: {Numerals.Whole(item.Count)} }}");
    }
}
