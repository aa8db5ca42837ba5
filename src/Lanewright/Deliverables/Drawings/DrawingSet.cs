using System.Collections.Immutable;
using System.Text;
using Lanewright.Deliverables.Drawings.Ladder;
using Lanewright.Deliverables.Drawings.Ribbon;
using Lanewright.Deliverables.Markup;
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
                files.Add(new Deliverable($"drawings/{way.Name}-ribbon.svg", stream =>
                    Write(stream, m => RibbonDrawing.Write(m, plan, way, isFile: true))));
            if (LadderDrawing.CanDraw(plan, way))
                files.Add(new Deliverable($"drawings/{way.Name}-ladder.svg", stream =>
                    Write(stream, m => LadderDrawing.Write(m, plan, way, isFile: true))));
        }
        return files.ToImmutable();
    }

    private static void Write(Stream stream, Action<MarkupWriter> draw)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 14, leaveOpen: true);
        writer.Write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        draw(new MarkupWriter(writer));
    }
}
