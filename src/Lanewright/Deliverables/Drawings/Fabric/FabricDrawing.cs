using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>The fabric by tiers, with what its links carry as width and colour.</summary>
internal static class FabricDrawing
{
    private const int MostBusiest = 6;
    private const double TableStep = 18;
    private const double RimOfScale = 0.8;

    /// <summary>Writes it.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="study">The demand and what came of it.</param>
    /// <param name="id">Its identifier.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    /// <param name="view">What a page shows it with; null for the network while all works.</param>
    public static void Write(MarkupWriter markup, DemandStudy study, string id, bool isFile, FabricView? view = null)
    {
        var damage = view?.Damage;
        var picture = FabricPicture.Of(study, damage is null ? study.Utilisation : damage.Utilisation);
        var layout = FabricLayout.Of(picture);
        var busiest = damage?.Busiest(MostBusiest) ?? study.Busiest(MostBusiest);
        var plan = study.Fabric.Map.Plan;
        var head = new SheetHead(id + "-load", $"Load of '{study.Demand.Name}'" + (damage is null ? "" : " with what is marked down"),
            $"{LoadWords.About(study)} Boxes: {picture.Drawn}.", Description(study, picture, busiest));
        var block = TitleBlock.Of(plan, study.Demand.Name,
            ("demand", study.Demand.Name, 2.4), ("split", LoadWords.Split(study.Fabric.Rule), 1.6),
            ("fullest link", LoadWords.Percent(damage?.MaxUtilisation ?? study.MaxUtilisation), 1.4),
            ("fullest host link", LoadWords.Percent(damage?.MaxAccessUtilisation ?? study.MaxAccessUtilisation), 1.6));
        var bottom = layout.Bottom + 40 + (busiest.Length * TableStep);
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            Legend(canvas);
            new FabricPainter(canvas, study, picture, layout, view).Draw();
            Table(canvas, study, busiest, layout.Bottom + 24);
        });
    }

    private static string Description(DemandStudy study, FabricPicture picture, ImmutableArray<BusyLink> busiest)
    {
        var tiers = picture.Nodes.GroupBy(n => n.Tier).Select(t =>
            $"tier {t.Key}: " + string.Join(", ", t.Select(n => n.Count > 1 ? $"{n.Name} ({n.Count})" : n.Name)));
        var links = busiest.Select(b => $"{LoadWords.Link(study.Fabric.Map, b)} {LoadWords.Percent(b.Utilisation)}");
        return $"Switches by tiers from the hosts up. {string.Join("; ", tiers)}. Fullest links: {string.Join(", ", links)}.";
    }

    /// <summary>The scale of colours and widths, at the upper right.</summary>
    private static void Legend(Canvas canvas)
    {
        const double left = 800;
        const double step = 13;
        canvas.Text(left - 10, Sheet.Top + 10, "share of a link in use", "small soft end");
        for (var i = 0; i <= LoadColour.Steps; i++)
        {
            var part = Share.From(i / (double)LoadColour.Steps);
            var width = FabricPainter.WidthOf(part);
            canvas.Filled(left + (i * step), Sheet.Top + 6 - (width / 2), step, width, LoadColour.Of(part));
            if (i % 5 == 0) canvas.Text(left + (i * step) + (step / 2), Sheet.Top + 26, LoadWords.Percent(part), "tiny soft mid");
        }
        var (end, middle) = (left + ((LoadColour.Steps + 1) * step), Sheet.Top + 6);
        var (thin, thick) = (FabricPainter.WidthOf(Share.From(0)) / 2, FabricPainter.WidthOf(Share.From(1)) / 2);
        canvas.Rim(PathText.Of($"M{left} {middle - thin}L{end} {middle - thick}V{middle + thick}L{left} {middle + thin}Z"), RimOfScale);
        var right = end + 22;
        FabricPainter.Over(canvas, PathText.Of($"M{right} {Sheet.Top + 6}H{right + 34}"));
        canvas.Text(right + 17, Sheet.Top + 26, "over", "tiny soft mid");
    }

    private static void Table(Canvas canvas, DemandStudy study, ImmutableArray<BusyLink> busiest, double top)
    {
        if (busiest.IsEmpty) return;
        double[] at = [Sheet.Margin, 640, 740, 860, 1000];
        string[] heads = ["fullest links", "links alike", "rate", "carried", "in use"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], top, heads[i], "small soft" + (i == 0 ? "" : " end"));
        canvas.Line(Sheet.Margin, top + 6, at[^1], top + 6, "fine");
        for (var row = 0; row < busiest.Length; row++)
        {
            var (busy, y) = (busiest[row], top + 4 + ((row + 1) * TableStep));
            var parallel = busy.Parallel > 1 ? $", {Numerals.Whole(busy.Parallel)} parallel" : "";
            canvas.Text(at[0], y, TextFit.Short(LoadWords.Link(study.Fabric.Map, busy) + parallel, at[1] - at[0] - 90, 12));
            string[] cells =
            [
                Numerals.Grouped(busy.ClassSize), busy.Rate.ToString(), Numerals.Shown(busy.Gigabits, "Gb/s"),
                LoadWords.Percent(busy.Utilisation),
            ];
            for (var i = 0; i < cells.Length; i++)
                canvas.Text(at[i + 1], y, cells[i], i == 3 && busy.Utilisation.Value > 1 + LoadWords.Rounding ? "alert end" : "end");
        }
    }
}
