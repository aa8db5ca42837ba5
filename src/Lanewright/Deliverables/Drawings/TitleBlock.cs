using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Drawings;

/// <summary>The strip at the foot of a sheet: which plan, which classes, how many links, what they come to.</summary>
internal sealed class TitleBlock
{
    /// <summary>Its height.</summary>
    public const double Height = 46;

    private const double Size = 13;
    private const double LabelSize = 10.5;
    private const double Inset = 9;
    private const double ReasonSize = 12;
    private const double ReasonStep = 17;
    private const int MostReasons = 4;
    private readonly ImmutableArray<(string Label, string Value, double Share)> cells;
    private readonly Verdict verdict;

    private TitleBlock(ImmutableArray<(string, string, double)> cells, Verdict verdict, string classes, ImmutableArray<string> reasons)
    {
        this.cells = cells;
        this.verdict = verdict;
        Classes = classes;
        Reasons = reasons;
    }

    /// <summary>The block in words: what is cut short in a cell stands here in full.</summary>
    public string Words => string.Join("; ", cells.Select(c => c.Label + " " + c.Value));

    /// <summary>Why the way fails or cannot be proved, in lines; none when it passes.</summary>
    public ImmutableArray<string> Reasons { get; }

    /// <summary>Height of the strip with the reasons above it.</summary>
    public double HeightWithReasons => Height + (Reasons.Length * ReasonStep);

    /// <summary>The classes by name.</summary>
    public string Classes { get; }

    /// <summary>The block of a way.</summary>
    public static TitleBlock Of(Plan plan, LinkWay way)
    {
        var cells = ImmutableArray.CreateBuilder<(string, string, double)>();
        cells.Add(("plan", plan.Name, 3));
        if (plan.Revision.Length > 0) cells.Add(("revision", plan.Revision, 1.1));
        if (plan.Date.Length > 0) cells.Add(("date", plan.Date, 1.3));
        var names = string.Join(", ", way.Members.Select(m => m.Name));
        var classes = way.Members.Length <= 4 ? names : $"{way.Name} and {Numerals.Whole(way.Members.Length - 1)} more";
        cells.Add((way.Members.Length == 1 ? "class" : "classes", classes, 2.2));
        cells.Add(("set", string.Join(", ", way.Sets), 2.2));
        cells.Add(("links", Numerals.Grouped(way.Links), 1));
        cells.Add(("verdict", Checks.Word(way.Solution.Verdict), 1.2));
        cells.Add(("weakest mark", Marks.Name(way.Solution.Mark), 1.9));
        return new TitleBlock(cells.ToImmutable(), way.Solution.Verdict, classes, ReasonsOf(way));
    }

    /// <summary>The block of a drawing of the whole plan, with cells of its own after those of the plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="about">What the drawing is about, in a word or two.</param>
    /// <param name="more">Label, value and relative width of each further cell.</param>
    public static TitleBlock Of(Plan plan, string about, params ImmutableArray<(string Label, string Value, double Share)> more)
    {
        var cells = ImmutableArray.CreateBuilder<(string, string, double)>();
        cells.Add(("plan", plan.Name, 3));
        if (plan.Revision.Length > 0) cells.Add(("revision", plan.Revision, 1.1));
        if (plan.Date.Length > 0) cells.Add(("date", plan.Date, 1.3));
        cells.AddRange(more);
        return new TitleBlock(cells.ToImmutable(), Verdict.Pass, about, []);
    }

    /// <summary>The block of a drawing that no plan stands behind.</summary>
    /// <param name="about">What the drawing is about, in a word or two.</param>
    /// <param name="cells">Label, value and relative width of each cell.</param>
    public static TitleBlock Of(string about, params ImmutableArray<(string Label, string Value, double Share)> cells) =>
        new(cells, Verdict.Pass, about, []);

    /// <summary>The block of a drawing of one link, with its verdict and what decides against it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="about">What the drawing is about, in a word or two.</param>
    /// <param name="verdict">What the link comes to.</param>
    /// <param name="reasons">What decides against it.</param>
    /// <param name="more">Label, value and relative width of each further cell.</param>
    public static TitleBlock Of(
        Plan plan, string about, Verdict verdict, ImmutableArray<string> reasons,
        params ImmutableArray<(string Label, string Value, double Share)> more)
    {
        var block = Of(plan, about, [.. more, ("verdict", Checks.Word(verdict), 1.2)]);
        return new TitleBlock(block.cells, verdict, about, verdict == Verdict.Pass ? [] : Shown(verdict, reasons));
    }

    /// <summary>The comparisons that decide against the way, one a line.</summary>
    private static ImmutableArray<string> ReasonsOf(LinkWay way)
    {
        var verdict = way.Solution.Verdict;
        if (verdict == Verdict.Pass) return [];
        var deciding = way.Solution.Checks.Where(c => c.Verdict == verdict && !c.IsAdvice).Select(LostBy.Describe).Distinct();
        return Shown(verdict, [.. deciding]);
    }

    private static ImmutableArray<string> Shown(Verdict verdict, ImmutableArray<string> deciding)
    {
        var shown = deciding.Take(MostReasons).Select(d => $"{(verdict == Verdict.Fail ? "Fails" : "Unproven")}: {d}");
        if (deciding.Length > MostReasons) shown = shown.Append($"and {Numerals.Whole(deciding.Length - MostReasons)} more");
        return [.. shown.Select(r => TextFit.Short(r, Sheet.Width - (2 * Sheet.Margin), ReasonSize, bold: true))];
    }

    /// <summary>Draws it with its upper edge at y.</summary>
    public void Draw(Canvas canvas, double y)
    {
        y = canvas.Lines(Sheet.Margin, y + 8, Reasons, ReasonStep, verdict == Verdict.Fail ? "alert" : "bold") - 8;
        const double width = Sheet.Width - (2 * Sheet.Margin);
        var widths = Widths(width);
        var x = Sheet.Margin;
        canvas.Begin("title-block");
        canvas.Box(Sheet.Margin, y, width, Height, "ink");
        for (var i = 0; i < cells.Length; i++)
        {
            var (label, value, _) = cells[i];
            var cell = widths[i];
            if (x > Sheet.Margin) canvas.Line(x, y, x, y + Height, "fine");
            canvas.Text(x + Inset, y + 16, label, "small soft");
            var isAlert = label == "verdict" && verdict == Verdict.Fail;
            if (isAlert) canvas.Box(x + 4, y + 20, cell - 8, 22, "actfill");
            var shown = TextFit.Short(isAlert ? value.ToUpperInvariant() : value, cell - (2 * Inset), Size, bold: true);
            canvas.Text(x + Inset, y + 36, shown, isAlert ? "sub bold light" : "sub bold");
            x += cell;
        }
        canvas.End();
    }

    /// <summary>Widths of the cells by their shares; what does not fit takes room from cells that have more than they need.</summary>
    private double[] Widths(double width)
    {
        var unit = width / cells.Sum(c => c.Share);
        double[] spare = [.. cells.Select(c => (unit * c.Share) - (2 * Inset)
            - Math.Max(TextFit.Width(c.Value, Size, bold: true), TextFit.Width(c.Label, LabelSize)))];
        var (free, lacking) = (spare.Where(s => s > 0).Sum(), -spare.Where(s => s < 0).Sum());
        if (lacking <= 0 || free <= 0) return [.. cells.Select(c => unit * c.Share)];
        var (taken, given) = (Math.Min(1, lacking / free), Math.Min(1, free / lacking));
        return [.. cells.Select((c, i) => (unit * c.Share) - (spare[i] * (spare[i] > 0 ? taken : given)))];
    }
}
