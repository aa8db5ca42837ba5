using Lanewright.Deliverables.Drawings.Section;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Placement;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report about trays, pulling of cables, and where things should stand.</summary>
internal sealed class ReportPathways(MarkupWriter markup, DesignedPlan designed)
{
    /// <summary>Where the section begins.</summary>
    public const string Anchor = "pathways";

    /// <summary>What it is called.</summary>
    public const string Heading = "Pathways and pulling";

    private const int MostBundles = 40;
    private const int MostSections = 3;
    private const int MostMoves = 20;

    /// <summary>Larger plans ask 'lanewright place': every place is priced.</summary>
    private const int MostLinksPlaced = 4000;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        if (designed.Pathways.Value.Net is null) return;
        markup.Element("h2", Heading, ("id", Anchor));
        markup.Element("p", "Fill is held against what is planned and what is allowed; weights are those of the catalogue or reckoned from "
            + "diameters and kinds. Work at height, under loads and on openings in rated walls and floors is for trained and "
            + "licensed persons; trays are bonded, openings are closed again after each change, and nobody stands on a tray. Local code "
            + "prevails.", ("class", "soft"));
        Moves();
        Pairs();
        Pulls();
        var number = 0;
        foreach (var fill in SectionSet.Fullest(designed).Take(MostSections))
        {
            markup.Open("figure", ("class", "ribbon"));
            new SectionDrawing(designed, fill).Write(markup, SectionSet.Name(number++), isFile: false);
            markup.Close();
        }
        Placement();
    }

    private void Moves()
    {
        var book = designed.Pathways.Value;
        if (book.Detours.Moves.IsEmpty) return;
        markup.Element("h3", "Cables that found no room on their shortest way");
        var table = HtmlTable.Open(markup, "cable", "full pathway", "#m longer");
        foreach (var move in book.Detours.Moves.Take(MostMoves))
            table.Row(PullPlanView.Name(designed, move.Key), book.Fills[move.Full].Pathway.FullName, Numerals.Fixed(move.MoreMetres, 1));
        table.Close();
        ReportWords.Left(markup, book.Detours.Moves.Length - MostMoves, "cables.csv names all under 'moved-off'");
    }

    private void Pairs()
    {
        var pairs = designed.Pathways.Value.Pairs;
        if (pairs.IsEmpty) return;
        markup.Element("h3", "Pairs of ways");
        var table = HtmlTable.Open(markup, "links", "#pairs", "#apart", "#that share a stretch", "#that meet at a crossing");
        foreach (var set in pairs.GroupBy(p => designed.Plan.Links.Statement(p.One)).OrderBy(g => g.Key))
            table.Row(designed.Plan.Statements[set.Key].Name, Numerals.Grouped(set.Count()),
                Numerals.Grouped(set.Count(p => !p.IsTogether && p.Crossings.IsEmpty)),
                Numerals.Grouped(set.Count(p => p.IsTogether)),
                Numerals.Grouped(set.Count(p => !p.Crossings.IsEmpty)));
        table.Close();
    }

    private void Pulls()
    {
        var bundles = designed.Pulls.Value.Bundles;
        if (bundles.IsEmpty) return;
        markup.Element("h3", "Order of pulling");
        var table = HtmlTable.Open(markup, "bundle", "from", "to", "pathways", "part", "#cables", "#way m", "#longest m", "#kg", "#persons",
            "#spare fibres", "why now");
        foreach (var bundle in bundles.Take(MostBundles))
        {
            table.Row(bundle.Name, designed.Plan.Building.Racks[bundle.From].Name, designed.Plan.Building.Racks[bundle.To].Name,
                string.Join(", ", bundle.Pathways), bundle.Item.Name, Numerals.Grouped(bundle.Cables.Length),
                bundle.Distance is { } distance ? Numerals.Plain(distance.Metres) : "unknown",
                Numerals.Plain(Math.Round(bundle.Length.Metres, 2)), Numerals.Fixed(bundle.Kilograms, 1),
                bundle.Persons(designed.Plan.Standards) is { } persons ? Numerals.Whole(persons) : "unproven",
                bundle.Fibres > 0 ? $"{Numerals.Whole(bundle.SpareFibres)} of {Numerals.Whole(bundle.Fibres)}" : "",
                PullPlanView.Words(bundle.Reason));
        }
        table.Close();
        ReportWords.Left(markup, bundles.Length - MostBundles, "pull-plan.csv holds all");
    }

    private void Placement()
    {
        markup.Element("h3", "Where things should stand");
        if (designed.Plan.Links.Count > MostLinksPlaced)
        {
            markup.Element("p", "'lanewright place' finds the cheapest places of switches and rows; in a plan as large as this it "
                + "takes longer than a report should.");
            return;
        }
        var answer = PlacementAnswer.Of(designed, null, _ => true);
        var unit = designed.Plan.Currency;
        foreach (var placement in answer.Groups)
            markup.Element("p", $"{designed.Plan.Devices.Groups[placement.Group].Name}: {PlacementWords.Of(placement, unit)}"
                + (placement.Best < placement.Now ? ": " + string.Join(", ", placement.Moves.Where(m => m.ChangesRack)
                    .Select(m => $"{designed.Plan.Devices.Name(m.Device)} to {m.To.Rack.Name}"
                        + (m.To.Gaps == BearingGaps.None ? "" : $" (unproven there: {PlacementWords.Of(m.To.Gaps)})"))) : "") + ".");
        foreach (var group in answer.Placeless)
            markup.Element("p", $"{designed.Plan.Devices.Groups[group.Group].Name}: {PlacementWords.Of(group)}.");
        foreach (var order in answer.Rows)
            markup.Element("p", $"Rows of {designed.Plan.Building.Halls[order.Hall].FullName}: {PlacementWords.Of(order, unit)}.");
        markup.Element("p", PlacementWords.Caution, ("class", "soft"));
        var table = HtmlTable.Open(
            markup, "links", "#from m", "#to m", "medium", "cable", $"#{unit} at the shortest", $"#{unit} a metre more");
        foreach (var (link, steps) in answer.Steps)
            foreach (var step in steps)
                table.Row(link.SetNames, Numerals.Plain(step.From.Metres), Numerals.Plain(step.To.Metres), step.Medium, step.Cable,
                    step.First.ToString(), step.EachMetre.ToString());
        table.Close();
    }
}
