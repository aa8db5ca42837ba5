using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings.Ladder;
using Lanewright.Deliverables.Drawings.Ribbon;
using Lanewright.Model;

namespace Lanewright.Deliverables.Drawings;

/// <summary>The drawings as files: a pair for each way of making links.</summary>
public static class DrawingSet
{
    /// <summary>More ways than this are not drawn; the report says how many were left out.</summary>
    public const int MostWays = 500;

    /// <summary>The files of the most telling ways.</summary>
    public static ImmutableArray<Deliverable> Of(Plan plan, ImmutableArray<LinkWay> ways)
    {
        var files = ImmutableArray.CreateBuilder<Deliverable>();
        foreach (var way in LinkWays.MostTelling(ways, MostWays))
        {
            if (RibbonDrawing.CanDraw(plan, way))
                files.Add(DrawingFile.Of($"drawings/{way.Name}-ribbon.svg", m => RibbonDrawing.Write(m, plan, way, isFile: true)));
            if (LadderDrawing.CanDraw(plan, way))
                files.Add(DrawingFile.Of($"drawings/{way.Name}-ladder.svg", m => LadderDrawing.Write(m, plan, way, isFile: true)));
        }
        return files.ToImmutable();
    }
}
