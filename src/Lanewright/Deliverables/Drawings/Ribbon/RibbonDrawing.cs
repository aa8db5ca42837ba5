using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The lane ribbon: one link, or one whole fan-out, from port to port.</summary>
public static class RibbonDrawing
{
    private const double TallFrom = 860;

    /// <summary>Writes the ribbon of a way; false when there is none to draw.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="way">The way.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    public static bool Write(MarkupWriter markup, Plan plan, LinkWay way, bool isFile)
    {
        if (ModelOf(plan, way) is not { } model) return false;
        var layout = RibbonLayout.Of(model);
        var head = new SheetHead(way.Name + "-ribbon", "Lane ribbon: " + WayWords.Title(way),
            WayWords.Subtitle(plan, way, model.IsTurned, model.Far[0].Name),
            Description(way, model));
        Sheet.Write(markup, head, TitleBlock.Of(plan, way), layout.Bottom, isFile, canvas => Draw(canvas, layout));
        return true;
    }

    /// <summary>Whether the ribbon of a way is so tall that it wants a page of its own.</summary>
    public static bool IsTall(Plan plan, LinkWay way) => ModelOf(plan, way) is { } model && RibbonLayout.Of(model).Bottom > TallFrom;

    /// <summary>Whether a way can be drawn.</summary>
    public static bool CanDraw(Plan plan, LinkWay way) => ModelOf(plan, way) is not null;

    private static RibbonModel? ModelOf(Plan plan, LinkWay way) =>
        PairRibbon.Of(way, plan.Standards) ?? AssemblyRibbon.Of(way) ?? FibreRibbon.Of(way);

    private static string Description(LinkWay way, RibbonModel model)
    {
        var forth = model.Strands.Count(s => s.Way != StrandWay.Back);
        var back = model.Strands.Count(s => s.Way != StrandWay.Forth);
        var spans = string.Join(". ", model.Spans.Select(s => s.Text));
        return $"{way.Solution.Name}, {Checks.Word(way.Solution.Verdict)}. From left to right: "
            + $"{string.Join(", ", model.Heads.NearPort.Skip(1))}; "
            + $"{string.Join(", ", model.Heads.NearBody.Skip(1))}; {string.Join(", ", model.Heads.Cable.Skip(1))}; "
            + $"{Numerals.Whole(model.Far.Length)} far end{(model.Far.Length == 1 ? "" : "s")}: "
            + $"{string.Join(", ", model.Heads.FarBody.Skip(1).Concat(model.Heads.FarPort.Skip(1)))}. "
            + $"{Numerals.Whole(forth)} paths from A, {Numerals.Whole(back)} paths to A. {spans}. {string.Join(" ", model.Notes)} "
            + $"Classes: {string.Join(", ", way.Members.Select(m => m.Name))}.";
    }

    private static void Draw(Canvas canvas, RibbonLayout layout)
    {
        Heads(canvas, layout);
        new StrandPainter(canvas, layout).Draw();
        var near = Painter(canvas, layout, layout.Near, isFar: false);
        near.Draw();
        var far = layout.Far.Select(f => Painter(canvas, layout, f, isFar: true)).ToList();
        foreach (var end in far) end.Draw();
        Places(layout, near, far);
        new SpanPainter(canvas, layout).Draw();
        Key(canvas, layout);
        canvas.Lines(Sheet.Margin, layout.NotesY, layout.Notes, RibbonLayout.NoteStep, "small soft");
    }

    /// <summary>Places that a fibre meets take its colour; lit places that no fibre meets stay empty. What a second fan-out does with
    /// colours is not known.</summary>
    private static void Places(RibbonLayout layout, EndPainter near, List<EndPainter> far)
    {
        var fibres = layout.Model.Strands.Where(s => s.Kind == StrandKind.Fibre).ToList();
        near.Places(fibres.ToDictionary(s => s.NearRow, s => s.Fibre));
        for (var end = 0; end < far.Count; end++)
            far[end].Places(fibres.Where(s => s.FarEnd == end).ToDictionary(s => s.FarRow, s => layout.Model.HasCouplers ? 0 : s.Fibre));
    }

    private static EndPainter Painter(Canvas canvas, RibbonLayout layout, EndGeometry end, bool isFar)
    {
        var words = isFar ? layout.Model.Heads.FarPort : layout.Model.Heads.NearPort;
        return new EndPainter(canvas, end, isFar, words.Any(w => w.StartsWith("FEC ", StringComparison.Ordinal)));
    }

    private static void Heads(Canvas canvas, RibbonLayout layout)
    {
        const double cable = Sheet.Width / 2;
        double[] at = [EndColumns.PortLeft, EndColumns.BodyLeft, cable, Sheet.Width - EndColumns.BodyLeft,
            Sheet.Width - EndColumns.PortLeft];
        string[] anchor = ["", "", " mid", " end", " end"];
        for (var column = 0; column < at.Length; column++)
        {
            var lines = layout.Heads[column];
            for (var i = 0; i < lines.Length; i++)
                canvas.Text(at[column], Sheet.Top + 12 + (i * RibbonLayout.HeadStep), lines[i],
                    (i == 0 ? "head soft" : i == 1 ? "head bold" : "head") + anchor[column]);
        }
    }

    private static void Key(Canvas canvas, RibbonLayout layout)
    {
        var y = layout.LegendY + 6;
        var x = Sheet.Margin;
        foreach (var (forth, words) in new[] { (true, "from A to B"), (false, "from B to A") })
        {
            canvas.Line(x, y, x + 46, y, forth ? "ink" : "ink broken");
            Arrow.Head(canvas, x + 23, y, 5.5, forth, forth);
            canvas.Text(x + 54, y + 4, words, "small");
            x += 140;
        }
        if (!layout.Model.Strands.Any(s => s.Kind != StrandKind.Pair)) return;
        foreach (var (isLaser, words) in new[] { (true, "laser"), (false, "photodiode") })
        {
            Arrow.Diode(canvas, x + 8, y, isLaser, isLaser);
            canvas.Text(x + 22, y + 4, words, "small");
            x += 84 + (isLaser ? 0 : 30);
        }
        if (layout.Model.Strands.Any(s => s.Fibre > 0))
            canvas.Text(x, y + 4, "circles: numbered places of the plug (LC: number of the fibre), in the colours of TIA-598", "small");
    }
}
