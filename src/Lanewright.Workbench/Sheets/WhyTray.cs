using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Section;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Workbench.Sheets;

/// <summary>How full a tray, riser or duct is: the cables of its fullest stretch, each with what it takes of the cross-section,
/// and what may be taken.</summary>
internal static class WhyTray
{
    private const int MostNames = 200;
    private const int MostStretches = 200;

    /// <summary>The name of a pathway's derivation.</summary>
    public static string Name(Pathway pathway) => "tray/" + pathway.FullName;

    /// <summary>The address of a stretch's derivation.</summary>
    public static string Address(Site site, SegmentFill fill) =>
        site.To("why", Name(fill.Pathway)) + "?stretch=" + Numerals.Whole(fill.Segment);

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string name)
    {
        var book = designed.Pathways.Value;
        var stretches = book.Fills.Where(f => f.Pathway.FullName == name).ToList();
        if (stretches.Count == 0) return paper.Unknown("Tray or duct", $"There is no tray, riser or duct '{name}'.");
        var asked = Numerals.TryWhole(paper.Asked["stretch"].ToString(), out var number) ? (int)number : -1;
        var shown = stretches.FirstOrDefault(f => f.Segment == asked) ?? stretches.MaxBy(f => (f.Fill, -f.Segment)) ?? stretches[0];
        var pathway = shown.Pathway;
        paper.Heading($"{Percent(shown.Fill.Value)} of {pathway.Kind} {pathway.FullName} is taken",
            $"Between {Ends(shown)}" + (stretches.Count == 1 ? "." : $", stretch {Numerals.Whole(stretches.IndexOf(shown) + 1)} of "
                + $"{Numerals.Whole(stretches.Count)}{(asked < 0 ? ", the fullest" : "")}. The others are below."));
        Taken(paper, designed, shown);
        Weight(paper, shown);
        if (shown.Cables > 0) paper.Figure(() => new SectionDrawing(designed, shown).Write(paper.Markup, "section", isFile: false));
        if (stretches.Count > 1) Stretches(paper, designed, stretches);
        Links(paper, designed, shown);
        return true;
    }

    private static void Taken(SheetPaper paper, DesignedPlan designed, SegmentFill fill)
    {
        var table = PaperTable.Open(paper.Markup, "cross-sections of the cables, the thickest first", "cable", "#mm across", "#mm² each",
            "#cables", "#mm² together");
        foreach (var (cable, count) in designed.Pathways.Value.Contents(fill.Segment))
        {
            var each = SegmentFill.Round(cable.Diameter);
            table.Row(new Entry(cable.Name, paper.Site.To("parts", cable.Name)), each > 0 ? Fixed(cable.Diameter.Millimetres) : "not known",
                each > 0 ? Fixed(each) : "", Numerals.Grouped(count), each > 0 ? Fixed(each * count) : "");
        }
        table.Row("sum", ["together", "", "", Numerals.Grouped(fill.Cables), Fixed(fill.SquareMillimetres)]);
        table.Close();
        var (pathway, standards) = (fill.Pathway, designed.Plan.Standards);
        var (most, planned) = (fill.Most(standards), fill.Planned(standards));
        var steps = PaperTable.OpenNarrow(paper.Markup, "what that is of the inside", "step", "#value", "from");
        steps.Row("inside cross-section", Fixed(SegmentFill.AreaOf(pathway)) + " mm²", pathway.IsDuct
            ? $"a circle of {Numerals.Plain(pathway.Width.Millimetres)} mm"
            : $"{Numerals.Plain(pathway.Width.Millimetres)} mm x {Numerals.Plain(pathway.Depth.Millimetres)} mm");
        steps.Row("taken of it", Percent(fill.Fill.Value), $"{Fixed(fill.SquareMillimetres)} / {Fixed(SegmentFill.AreaOf(pathway))}");
        steps.Row("may be taken when planned", Percent(planned.Value), Words(planned));
        steps.Row("may ever be taken", Percent(most.Value), Words(most));
        steps.Row("sum", ["taken of what may ever be", Percent(fill.OfMost(standards).Value), ""]);
        steps.Close();
        if (fill.Unknown > 0)
            paper.Markup.Element("p", $"Nobody states the diameter of {Numerals.Grouped(fill.Unknown)} of its cables: they count for "
                + "nothing, so it is fuller than told.", ("class", "alert"));
    }

    private static void Weight(SheetPaper paper, SegmentFill fill) => paper.Markup.Element("p",
        $"A metre of its cables weighs {Fixed(fill.KilogramsAMetre)} kg" + (fill.Pathway.LoadRating is { } bears
            ? $", and it bears {Fixed(bears)} kg a metre."
            : "; the plan does not say what it bears.")
        + " What it hangs from is for who builds it to prove, and local codes prevail.");

    private static void Stretches(SheetPaper paper, DesignedPlan designed, List<SegmentFill> stretches)
    {
        const string caption = "its stretches, between points where cables may enter, leave or turn";
        var table = PaperTable.OpenNarrow(paper.Markup, caption, "stretch", "between", "#m", "#cables", "#taken", "#of what may be");
        foreach (var (fill, i) in stretches.Take(MostStretches).Select((f, i) => (f, i)))
            table.Row(new Entry(Numerals.Whole(i + 1), Address(paper.Site, fill)), Ends(fill), Fixed(fill.Stretch.Metres),
                Numerals.Grouped(fill.Cables), Percent(fill.Fill.Value), Percent(fill.OfMost(designed.Plan.Standards).Value));
        table.Close();
    }

    /// <summary>What lies in it by name, so that somebody can look whose cables these are.</summary>
    private static void Links(SheetPaper paper, DesignedPlan designed, SegmentFill fill)
    {
        var book = designed.Pathways.Value;
        var inside = Enumerable.Range(0, book.Pieces.Length).Where(i => book.WayOf(i)?.Stretches.Contains(fill.Segment) == true)
            .Select(i => book.Pieces[i].Key).ToLookup(k => k.Kind, k => k.Index);
        var trunks = inside[CableKind.Trunk].Distinct().Select(t => designed.Plan.Trunks[t].Name).ToList();
        var links = inside[CableKind.Cable].Distinct().Order().ToList();
        paper.Markup.Element("h2", "Whose cables these are");
        paper.Markup.Open("p", ("class", "list"));
        foreach (var name in trunks.Take(MostNames)) paper.Way(name, paper.Site.To("plant", name));
        foreach (var link in links.Take(MostNames)) paper.Way(Identifiers.Link(link), paper.Site.To("links", Identifiers.Link(link)));
        var left = Math.Max(0, links.Count - MostNames) + Math.Max(0, trunks.Count - MostNames);
        if (left > 0) paper.Markup.Text($" and {Numerals.Grouped(left)} more; cables.csv among the documents tells the way of each.");
        if (trunks.Count + links.Count == 0) paper.Markup.Text("Nothing lies here.");
        paper.Markup.Close();
    }

    private static string Ends(SegmentFill fill)
    {
        string At(int point) => $"{Fixed(fill.Net.Points[point].X)} / {Fixed(fill.Net.Points[point].Y)} m";
        return $"{At(fill.Stretch.A)} and {At(fill.Stretch.B)}";
    }

    private static string Words(Known<double> known) => $"{known.Source}, {Marks.Name(known.Source.Mark)}";

    private static string Percent(double share) => Numerals.Fixed(share * 100, 2) + " %";

    private static string Fixed(double value) => Numerals.Fixed(value, 2);
}
