using System.Collections.Immutable;
using System.Text;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
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
    private readonly ImmutableArray<ImmutableArray<PlacedGroup>> groups;

    private OptionPlan(Plan plan, FabricOption option, Func<string, string> refer, TextWriter writer)
    {
        this.plan = plan;
        this.option = option;
        this.refer = refer;
        this.writer = writer;
        groups = [.. option.Layout.Groups.Select(PlacedGroup.Of)];
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
        Racks();
        Sites();
        Devices();
        if (!option.Layout.Links.IsEmpty) writer.WriteLine("\nlinks:");
        foreach (var links in option.Layout.Links) Links(links);
        Stock();
    }

    private void Head()
    {
        writer.WriteLine($"# {FabricShapes.Title(option.Shape)} for {Numerals.Grouped(option.Hosts)} hosts, "
            + "as 'lanewright size' proposed it: "
            + $"{Numerals.Grouped(option.Price.Units, 2)} to buy.");
        foreach (var use in option.Switches) writer.WriteLine("# " + FabricWords.Switches(use));
        foreach (var tier in option.Uplinks) writer.WriteLine($"# tier {Numerals.Whole(tier.Tier + 1)}: {FabricWords.Uplinks(tier)}");
        writer.WriteLine("# What is left open here is decided by 'lanewright build': media, modules, cables and their lengths.");
        writer.WriteLine("lanewright: 1");
        writer.WriteLine($"name: {PlanText.Name($"{plan.Name}-{FabricShapes.Word(option.Shape)}")}");
        writer.WriteLine($"title: {PlanText.Name($"{plan.Title}: {FabricShapes.Title(option.Shape)}")}");
        writer.WriteLine($"currency: {PlanText.Name(plan.Currency)}");
        if (!plan.CatalogueFiles.IsEmpty) writer.WriteLine($"catalogue: {PlanText.Names([.. plan.CatalogueFiles.Select(refer)])}");
        if (!plan.StandardsFiles.IsEmpty) writer.WriteLine($"standards: {PlanText.Names([.. plan.StandardsFiles.Select(refer)])}");
    }

    private void Policy()
    {
        var lines = PolicyText.Lines(plan.Policy, plan.Standards).ToList();
        if (lines.Count == 0) return;
        writer.WriteLine("\npolicy:");
        foreach (var line in lines) writer.WriteLine("  " + line);
    }

    private void Racks()
    {
        writer.WriteLine("\nracks:");
        foreach (var type in option.Layout.Racks.Select(r => r.Type).Distinct())
        {
            writer.WriteLine($"  {PlanText.Name(type.Name)}: {{ units: {Numerals.Whole(type.Units)}, width: {PlanText.Length(type.Width)}, "
                + $"depth: {PlanText.Length(type.Depth)}, front-space: {PlanText.Length(type.FrontSpace)}, "
                + $"plinth: {PlanText.Length(type.Plinth)} }}");
        }
    }

    private void Sites()
    {
        writer.WriteLine("\nsites:");
        foreach (var site in option.Layout.Racks.GroupBy(r => r.Hall.Site))
        {
            writer.WriteLine($"  {PlanText.Name(site.Key)}:");
            writer.WriteLine("    halls:");
            foreach (var hall in site.GroupBy(r => r.Hall))
            {
                writer.WriteLine($"      {PlanText.Name(hall.Key.Name)}:");
                writer.WriteLine($"        pathway-height: {PlanText.Length(hall.Key.PathwayHeight)}");
                writer.WriteLine($"        exit: {{ x: {PlanText.Length(hall.Key.ExitX)}, y: {PlanText.Length(hall.Key.ExitY)} }}");
                writer.WriteLine("        rows:");
                foreach (var row in hall.GroupBy(r => r.Row)) Row(row.Key, [.. row]);
            }
        }
        Routes();
    }

    private void Row(string name, ImmutableArray<Rack> racks)
    {
        var first = racks[0];
        var x = first.X - (first.Type.Width * (first.Number - 0.5));
        writer.WriteLine($"          {PlanText.Name(name)}: {{ racks: {Numerals.Whole(racks.Max(r => r.Number))}, "
            + $"rack: {PlanText.Name(first.Type.Name)}, x: {PlanText.Length(x)}, y: {PlanText.Length(first.Y)} }}");
    }

    private void Routes()
    {
        var halls = option.Layout.Racks.Select(r => r.Hall).ToHashSet();
        var routes = plan.Building.Routes.Where(r => halls.Contains(r.From) && halls.Contains(r.To)).ToList();
        if (routes.Count == 0) return;
        writer.WriteLine("\nroutes:");
        foreach (var route in routes)
        {
            var connections = route.Connections is { } c ? $", connections: {Numerals.Whole(c)}" : "";
            writer.WriteLine($"  - {{ from: {PlanText.Name(route.From.FullName)}, to: {PlanText.Name(route.To.FullName)}, "
                + $"length: {PlanText.Length(route.Length)}{connections}, splices: {Numerals.Whole(route.Splices)} }}");
        }
    }

    private void Devices()
    {
        writer.WriteLine("\ndevices:");
        for (var i = 0; i < groups.Length; i++)
        {
            var group = option.Layout.Groups[i];
            foreach (var placed in groups[i]) Device(group, placed);
        }
    }

    private void Device(FabricGroup group, PlacedGroup placed)
    {
        var cards = group.Cards.IsEmpty ? "" : $", cards: {PlanText.Names([.. Cards(group.Cards)])}";
        var perRack = placed.PerRack > 1 ? $", per-rack: {Numerals.Whole(placed.PerRack)}" : "";
        var step = placed.PerRack > 1 && placed.Step != group.Model.Units ? $", step: {Numerals.Whole(placed.Step)}" : "";
        var existing = group.Role == SwitchRole.Host ? ", existing: yes" : "";
        writer.WriteLine($"  {PlanText.Name(placed.Name)}:");
        writer.WriteLine($"    {{ model: {PlanText.Name(group.Model.Name)}{cards}, count: {Numerals.Whole(placed.Count)}{existing},");
        var racks = PlanText.Names([.. RackRanges(placed.Racks)]);
        writer.WriteLine($"      racks: {racks}{perRack}, unit: {Numerals.Whole(placed.Unit)}{step} }}");
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

    private IEnumerable<string> RackRanges(ImmutableArray<Rack> racks)
    {
        for (var at = 0; at < racks.Length;)
        {
            var end = at + 1;
            while (end < racks.Length && racks[end].Hall == racks[at].Hall && racks[end].Row == racks[at].Row
                && racks[end].Number == racks[end - 1].Number + 1)
            {
                end++;
            }
            yield return $"{racks[at].Hall.FullName}/{racks[at].Row}/{PlanText.Ranges(racks[at..end].Select(r => r.Number))}";
            at = end;
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
