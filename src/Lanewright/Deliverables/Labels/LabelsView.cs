using Lanewright.Deliverables.Tables;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>A row a label, for printers that take a table: what is written, and where it stands on the sheets.</summary>
public static class LabelsView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("labels",
    [
        new("kind", 8), new("line-1", 28), new("line-2", 28), new("line-3", 28), new("page", 7, ColumnKind.Whole),
        new("place", 7, ColumnKind.Whole), new("letters-mm", 10, ColumnKind.Real),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        var onPage = designed.Plan.Labels.OnPage;
        var number = 0;
        foreach (var label in LabelList.Of(designed))
        {
            yield return [label.Kind, label.First, label.Second, label.Third, (number / onPage) + 1, (number % onPage) + 1,
                Math.Round(LabelLine.Smallest(designed.Plan.Labels, label), 2)];
            number++;
        }
    }
}
