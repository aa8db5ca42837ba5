using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>The labels of the cords of lines, both ends, in the order of the cable schedule.</summary>
internal static class LineCordLabels
{
    /// <summary>The labels.</summary>
    public static IEnumerable<CableLabel> All(DesignedPlan designed)
    {
        if (designed.Plan.LinePorts.IsEmpty) yield break;
        var names = new LinePointNames(designed.Plan);
        foreach (var cord in designed.Lines.Value.Cords)
        {
            var name = Identifiers.LineCord(cord.Line, cord.Route, cord.Number);
            var (here, there) = (names.Label(cord.From), names.Label(cord.To));
            yield return new CableLabel(name, "from", here, there, cord.Cord?.Fibre ?? "");
            yield return new CableLabel(name, "to", there, here, cord.Cord?.Fibre ?? "");
        }
    }
}
