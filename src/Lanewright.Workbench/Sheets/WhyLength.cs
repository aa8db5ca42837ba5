using Lanewright.Engineering.Cabling;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The length of a link's cable along its way.</summary>
internal static class WhyLength
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string thing)
    {
        if (paper.Now.Places?.LinkOf(thing) is not { } link) return paper.Unknown("Length of a cable", $"There is no link '{thing}'.");
        paper.Heading($"Length of the cable of {thing}");
        Section(paper, designed, link, "h2");
        return true;
    }

    /// <summary>The way of a link's cable, step by step, under a heading.</summary>
    public static void Section(SheetPaper paper, DesignedPlan designed, int link, string heading)
    {
        var (plan, markup) = (designed.Plan, paper.Markup);
        var statement = plan.Statements[plan.Links.Statement(link)];
        var solution = designed.Design.SolutionOf(link);
        markup.Element(heading, "The length along its way", ("id", "length"));
        if (statement.Length is { } stated)
        {
            markup.Element("p", $"The plan itself says {stated} for '{statement.Name}'.");
            return;
        }
        if (solution?.Through is not null)
        {
            markup.Open("p");
            markup.Text("It goes through trunks, with cords at the ends and between them. ");
            paper.Way("The trunks and the way of the light", paper.Site.To("plant", statement.Through[0].Name));
            markup.Close();
            return;
        }
        if (designed.Pathways.Value.PartsOf(link) is not { } parts)
        {
            markup.Element("p", "An end of it has no place in a rack, or no routes join the halls, so that no length can be told.");
            return;
        }
        Table(paper, designed, link, parts);
        if (solution is null) return;
        var legs = designed.Design.CableOf(link) is >= 0 and var cable ? designed.Design.Cables[cable].Links : 1;
        markup.Element("p", $"Ordered: {solution.Length}, the next length of {solution.Cable.Name} that is sold"
            + (legs > 1 ? $"; its {Numerals.Whole(legs)} legs are as long as the longest of them needs." : "."));
    }

    private static void Table(SheetPaper paper, DesignedPlan designed, int link, RouteParts parts)
    {
        var (from, to) = (designed.Plan.Links.FromDevice(link), designed.Plan.Links.ToDevice(link));
        var table = PaperTable.OpenNarrow(paper.Markup, "metres", "step", "#m");
        var isInside = designed.Plan.Devices.RackIndex(from) == designed.Plan.Devices.RackIndex(to);
        Row(isInside ? "from the one device to the other in its rack" : "from the first device up to the pathway", parts.Rise);
        var across = parts.Across;
        foreach (var (pathway, length) in designed.Pathways.Value.Stretches(link).Where(s => s.Pathway.Route is null))
        {
            var name = pathway.FullName;
            table.Row(new Entry($"along {name}", paper.Now.Places?.Of(name) is { } place ? paper.Site.To(place.Page) : ""), Metres(length));
            across -= length;
        }
        Row(across == parts.Across ? "along and across the rows" : "to the pathways and from them", across);
        if (designed.Pathways.Value.RoutesOf(link).ToList() is { Count: > 1 } routes)
            foreach (var route in routes) Row($"along the route {route.Name}, as surveyed", route.Length);
        else
            Row("between the halls, as surveyed", parts.Surveyed);
        Row("from the pathway down to the second device", parts.Drop);
        Row($"for detours, {designed.Plan.Policy.Contingency}", parts.Detours);
        Row("service loops at both ends", parts.Loops);
        Row("inside the racks at both ends", parts.InsideRacks);
        table.Row("sum", ["needed", Metres(parts.Total)]);
        table.Close();
        return;

        void Row(string name, Length length)
        {
            if (Math.Abs(length.Metres) >= 0.005) table.Row(name, Metres(length));
        }
    }

    private static string Metres(Length length) => Numerals.Fixed(length.Metres, 2);
}
