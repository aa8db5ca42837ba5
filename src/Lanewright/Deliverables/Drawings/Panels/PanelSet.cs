using System.Collections.Immutable;
using Lanewright.Engineering.Plant;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Panels;

/// <summary>The fronts of panels, a few to a sheet.</summary>
internal static class PanelSet
{
    private const int MostSheets = 60;
    private const int UnitsOnSheet = 12;

    /// <summary>The drawings.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        if (designed.Plan.Trunks.IsEmpty) yield break;
        var fronts = designed.Plant.Value.Fronts.Value;
        var number = 0;
        foreach (var panels in Sheets(designed, fronts).Take(MostSheets))
        {
            var id = Identifiers.Panels(++number);
            yield return DrawingFile.Of($"drawings/{id}.svg", m => new PanelDrawing(designed, fronts, panels).Write(m, id, isFile: true));
        }
    }

    /// <summary>Panels in order, as many on a sheet as their heights allow.</summary>
    public static IEnumerable<ImmutableArray<int>> Sheets(DesignedPlan designed, PanelFronts fronts)
    {
        var sheet = ImmutableArray.CreateBuilder<int>();
        var units = 0;
        foreach (var panel in fronts.Panels)
        {
            var height = designed.Plan.Devices.Group(panel).Model.Units;
            if (sheet.Count > 0 && units + height > UnitsOnSheet)
            {
                yield return sheet.ToImmutable();
                sheet.Clear();
                units = 0;
            }
            sheet.Add(panel);
            units += height;
        }
        if (sheet.Count > 0) yield return sheet.ToImmutable();
    }
}
