using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>Writes the places an option stands in, with everything the plan says of them: kinds of rack and what they bear, halls with
/// their air, floor and trays, ways between halls, and power feeds. Of a hall laid out by rule there is nothing more to say.</summary>
internal sealed class PlacesText
{
    private readonly Plan plan;
    private readonly TextWriter writer;
    private readonly bool isStandard;
    private readonly ImmutableArray<Rack> racks;

    /// <summary>Takes the places.</summary>
    /// <param name="plan">The plan the question was asked in.</param>
    /// <param name="used">The racks an option stands in.</param>
    /// <param name="isStandard">Whether their hall was laid out by rule.</param>
    /// <param name="writer">Where to.</param>
    public PlacesText(Plan plan, ImmutableArray<Rack> used, bool isStandard, TextWriter writer)
    {
        this.plan = plan;
        this.writer = writer;
        this.isStandard = isStandard;
        var halls = used.Select(r => r.Hall).ToHashSet();
        // A hall is written whole: its cooling, its floor and its trays are shared by all that stands in it.
        racks = isStandard ? used : [.. plan.Building.Racks.Where(r => halls.Contains(r.Hall))];
    }

    /// <summary>The feeds a rack has, in natural order of their names.</summary>
    public ImmutableArray<string> FeedsOf(Rack rack) =>
        isStandard ? [] : [.. plan.Power.Where(f => f.Racks.Contains(rack.Index)).Select(f => f.Name)];

    /// <summary>Writes racks, sites, routes and feeds.</summary>
    public void Write()
    {
        writer.WriteLine("\nracks:");
        foreach (var type in racks.Select(r => r.Type).Distinct()) Type(type);
        writer.WriteLine("\nsites:");
        foreach (var site in racks.GroupBy(r => r.Hall.Site))
        {
            writer.WriteLine($"  {PlanText.Name(site.Key)}:");
            writer.WriteLine("    halls:");
            foreach (var hall in site.GroupBy(r => r.Hall)) Hall(hall.Key, hall);
        }
        Routes();
        Feeds();
    }

    /// <summary>Racks in order as plans name them, those that follow one another in a row as one range.</summary>
    public static IEnumerable<string> Ranges(ImmutableArray<Rack> racks)
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

    private void Type(RackType type)
    {
        writer.Write($"  {PlanText.Name(type.Name)}: {{ units: {Numerals.Whole(type.Units)}, width: {PlanText.Length(type.Width)}, "
            + $"depth: {PlanText.Length(type.Depth)}, front-space: {PlanText.Length(type.FrontSpace)}, "
            + $"plinth: {PlanText.Length(type.Plinth)}");
        // In micrometres: a difference of two lengths is the usual depth but for the last places.
        if (PlanText.Length(type.DeviceDepth) != PlanText.Length(type.Depth - type.FrontSpace))
            writer.Write($", device-depth: {PlanText.Length(type.DeviceDepth)}");
        if (type.WeightLimit is { } weight) writer.Write($", weight-limit: {PlanText.Weight(weight)}");
        if (type.OwnWeight is { } own) writer.Write($", own-weight: {PlanText.Weight(own)}");
        if (type.PowerLimit is { } power) writer.Write($", power-limit: {PlanText.Power(power)}");
        writer.WriteLine(" }");
    }

    private void Hall(Hall hall, IEnumerable<Rack> inHall)
    {
        writer.WriteLine($"      {PlanText.Name(hall.Name)}:");
        writer.WriteLine($"        pathway-height: {PlanText.Length(hall.PathwayHeight)}");
        writer.WriteLine($"        exit: {Point(hall.ExitX, hall.ExitY)}");
        if (!hall.Exits.IsEmpty)
        {
            writer.WriteLine("        exits:");
            foreach (var exit in hall.Exits) writer.WriteLine($"          {PlanText.Name(exit.Name)}: {Point(exit.X, exit.Y)}");
        }
        if (hall.Ceiling is { } ceiling) writer.WriteLine($"        ceiling: {PlanText.Length(ceiling)}");
        if (hall.Altitude is { } altitude) writer.WriteLine($"        altitude: {PlanText.Length(altitude)}");
        if (hall.Inlet is { } inlet) writer.WriteLine($"        inlet: {PlanText.Number(inlet.Celsius)} C");
        if (hall.AirClass.Length > 0) writer.WriteLine($"        air-class: {PlanText.Name(hall.AirClass)}");
        if (hall.Cooling is { } cooling) writer.WriteLine($"        cooling: {PlanText.Power(cooling)}");
        if (hall.FloorLoad is { } load) writer.WriteLine($"        floor-load: {PlanText.Number(load)} kPa");
        writer.WriteLine("        rows:");
        foreach (var row in inHall.GroupBy(r => r.Row)) Row(row.Key, [.. row]);
        var pathways = isStandard ? [] : plan.Building.Pathways.Where(p => p.Hall == hall && p.Route is null).ToList();
        if (pathways.Count == 0) return;
        writer.WriteLine("        pathways:");
        foreach (var pathway in pathways) Pathway(pathway);
    }

    private void Row(string name, ImmutableArray<Rack> inRow)
    {
        var first = inRow[0];
        var x = first.X - (first.Type.Width * (first.Number - 0.5));
        writer.WriteLine($"          {PlanText.Name(name)}: {{ racks: {Numerals.Whole(inRow.Max(r => r.Number))}, "
            + $"rack: {PlanText.Name(first.Type.Name)}, x: {PlanText.Length(x)}, y: {PlanText.Length(first.Y)}{Fronts(first)} }}");
    }

    private static string Fronts(Rack rack) => rack.Fronts switch
    {
        RowSide.Near => ", fronts: near",
        RowSide.Far => ", fronts: far",
        _ => "",
    };

    private void Pathway(Pathway pathway)
    {
        writer.Write($"          {PlanText.Name(pathway.Name)}: {{ from: {End(pathway, pathway.FromX, pathway.FromY, pathway.FromHeight)}, "
            + $"to: {End(pathway, pathway.ToX, pathway.ToY, pathway.ToHeight)}, ");
        writer.WriteLine($"{CrossSection(pathway)} }}");
    }

    private static string End(Pathway pathway, Length x, Length y, Length height) => height == pathway.Hall.PathwayHeight
        ? Point(x, y)
        : $"{{ x: {PlanText.Length(x)}, y: {PlanText.Length(y)}, height: {PlanText.Length(height)} }}";

    private static string CrossSection(Pathway pathway) => $"width: {PlanText.Length(pathway.Width)}"
        + (pathway.Kind == "tray" ? "" : $", kind: {pathway.Kind}")
        + (pathway.IsDuct ? "" : $", depth: {PlanText.Length(pathway.Depth)}")
        + (pathway.Side.Length > 0 ? $", side: {PlanText.Name(pathway.Side)}" : "")
        + (pathway.LoadRating is { } load ? $", load-rating: {PlanText.Number(load)} kg/m" : "")
        + (pathway.BendRadius is { } bend ? $", bend-radius: {PlanText.Length(bend)}" : "")
        + (pathway.PullPoints > 0 ? $", pull-points: {Numerals.Whole(pathway.PullPoints)}" : "");

    private void Routes()
    {
        var halls = racks.Select(r => r.Hall).ToHashSet();
        var routes = plan.Building.Routes.Where(r => halls.Contains(r.From) && halls.Contains(r.To)).ToList();
        if (routes.Count == 0) return;
        writer.WriteLine("\nroutes:");
        foreach (var route in routes)
        {
            var connections = route.Connections is { } c ? $", connections: {Numerals.Whole(c)}" : "";
            writer.Write($"  - {{ from: {PlanText.Name(route.From.FullName)}, to: {PlanText.Name(route.To.FullName)}, "
                + $"length: {PlanText.Length(route.Length)}{connections}, splices: {Numerals.Whole(route.Splices)}"
                + (route.Name == $"{route.From.Name} to {route.To.Name}" ? "" : $", name: {PlanText.Name(route.Name)}")
                + (route.FromExit.Name.Length > 0 ? $", from-exit: {PlanText.Name(route.FromExit.Name)}" : "")
                + (route.ToExit.Name.Length > 0 ? $", to-exit: {PlanText.Name(route.ToExit.Name)}" : ""));
            // The cross-section says the side as well.
            var pathway = plan.Building.Pathways.FirstOrDefault(p => p.Route == route);
            if (pathway is not null) writer.Write($", {CrossSection(pathway)}");
            else if (route.Side.Length > 0) writer.Write($", side: {PlanText.Name(route.Side)}");
            writer.WriteLine(" }");
        }
    }

    private void Feeds()
    {
        if (isStandard) return;
        var isFirst = true;
        foreach (var feed in plan.Power)
        {
            ImmutableArray<Rack> fed = [.. racks.Where(r => feed.Racks.Contains(r.Index))];
            if (fed.IsEmpty) continue;
            if (isFirst) writer.WriteLine("\npower:");
            isFirst = false;
            var outlets = feed.IsPhaseToPhase ? ", outlets: phase-to-phase" : "";
            writer.WriteLine($"  {PlanText.Name(feed.Name)}: {{ racks: {PlanText.Names([.. Ranges(fed)])}, "
                + $"volts: {PlanText.Number(feed.Volts)} V, breaker: {PlanText.Number(feed.Breaker.Value)} A, "
                + $"phases: {Numerals.Whole(feed.Phases)}{outlets}, full-rated: {PlanText.Switch(feed.IsFullRated)} }}");
        }
    }

    private static string Point(Length x, Length y) => $"{{ x: {PlanText.Length(x)}, y: {PlanText.Length(y)} }}";
}
