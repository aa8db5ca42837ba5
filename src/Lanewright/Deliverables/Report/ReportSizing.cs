using Lanewright.Deliverables.Drawings.Fabrics;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report that tells what fabric to buy.</summary>
internal sealed class ReportSizing(MarkupWriter markup, Plan plan, FabricStudy study)
{
    /// <summary>Writes it.</summary>
    public void Write()
    {
        markup.Element("h2", "What fabric to buy", ("id", "sizing"));
        if (study.Answer.Options.IsEmpty) Nothing();
        else Options();
        if (study.Answer.Options.IsEmpty)
        {
            if (!study.IsQuick)
                markup.Element("p", "Which wishes cannot be had together takes long to find out for a fabric of this size: "
                    + "'lanewright size' of this plan tells it.");
            return;
        }
        foreach (var breakEven in study.BreakEvensOf(study.DrawnQuantities).Where(b => b.Stretches.Any(s => s.Shape is not null)))
            Figure(() => BreakEvenChart.Write(markup, plan, breakEven, isFile: false));
        if (FabricWords.BreakEvensApart(study) is { Length: > 0 } apart)
            markup.Element("p", char.ToUpperInvariant(apart[0]) + apart[1..] + ".");
    }

    private void Options()
    {
        Figure(() => OptionSheet.Write(markup, plan, study, isFile: false));
        var table = HtmlTable.Open(markup, "option", "switches", $"#{plan.Currency} to buy", $"#{plan.Currency} over the years",
            "#no less than", "#gap", "#power", "#rack units");
        foreach (var option in study.Answer.Options)
        {
            table.Row(FabricShapes.Title(option.Shape), string.Join("; ", option.Switches.Select(FabricWords.Switches)),
                Numerals.Grouped(option.Price.Units, 2), Numerals.Grouped(option.PriceOverYears.Units, 2),
                Numerals.Grouped(option.LowerBound.Units, 2), option.Gap.ToString(), Numerals.Grouped((decimal)option.Watts.Value) + " W",
                Numerals.Grouped(option.RackUnits));
        }
        table.Close();
        var notes = FabricWords.FasterLanes(study.Answer.Options).Concat(FabricWords.NotSettled(study.Answer.Options));
        foreach (var note in notes.Append(FabricWords.BoundHolds).Append(FabricWords.EnergyCounted))
            markup.Element("p", char.ToUpperInvariant(note[0]) + note[1..] + ".");
        foreach (var lost in study.Answer.Lost) markup.Element("p", $"{FabricShapes.Title(lost.Shape)} lost: {lost.Reason}.");
    }

    private void Nothing()
    {
        markup.Element("p", "Nothing fits.", ("class", "alert"));
        foreach (var lost in study.Answer.Lost) markup.Element("p", $"{FabricShapes.Title(lost.Shape)}: {lost.Reason}.");
        if (!study.IsQuick) return;
        foreach (var sentence in WishWords.Sentences(study)) markup.Element("p", char.ToUpperInvariant(sentence[0]) + sentence[1..] + ".");
        if (study.Relaxations.IsEmpty) return;
        var table = HtmlTable.Open(markup, "wish", "wanted", "possible, the others kept", "by");
        foreach (var relaxation in study.Relaxations)
            table.Row(relaxation.Wish.Key, relaxation.Wish.Text, relaxation.Possible ?? "not by this wish alone", relaxation.By);
        table.Close();
    }

    private void Figure(Action draw)
    {
        markup.Open("figure");
        draw();
        markup.Close();
    }
}
