using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Labels that reach over the edge of their page.</summary>
internal sealed class LabelsOffPage() : Rule("LW4306", nameof(LabelsOffPage))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var sheet = judgement.Plan.Labels;
        Hold(judgement, "across", sheet.ReachAcross, sheet.PageWidth, "columns");
        Hold(judgement, "down", sheet.ReachDown, sheet.PageHeight, "rows");
    }

    private void Hold(Judgement judgement, string way, Length reach, Length page, string fewer)
    {
        // Sizes are printed in tenths of a millimetre.
        if (reach.Millimetres <= page.Millimetres + 0.05) return;
        judgement.Add(this, judgement.Plan.Labels.Span,
            $"labels reach {Numerals.Shown(reach.Millimetres, "mm")} {way} and a page {judgement.Plan.Labels.Page} has "
            + $"{Numerals.Shown(page.Millimetres, "mm")}; take fewer {fewer}, smaller labels or another page",
            "labels", 1, Kind.Severity, new Evidence("labels " + way, reach.Millimetres, page.Millimetres, "mm", null));
    }
}
