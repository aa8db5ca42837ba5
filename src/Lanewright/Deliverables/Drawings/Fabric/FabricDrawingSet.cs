using System.Collections.Immutable;
using System.Text;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>The drawings of what a plan's networks carry, as files: a pair for each demand.</summary>
public static class FabricDrawingSet
{
    /// <summary>The files; none for a plan without demands.</summary>
    public static ImmutableArray<Deliverable> Of(LoadStudy load)
    {
        var files = ImmutableArray.CreateBuilder<Deliverable>();
        foreach (var study in load.Demands)
        {
            var id = Identifiers.Demand(study.Demand.Index);
            files.Add(new Deliverable($"drawings/{id}-load.svg",
                stream => Write(stream, m => FabricDrawing.Write(m, study, id, isFile: true))));
            // A hose has no failures, and neither has what no split was found for.
            if (!FailureDrawing.CanDraw(study)) continue;
            files.Add(new Deliverable($"drawings/{id}-failures.svg",
                stream => Write(stream, m => FailureDrawing.Write(m, study, id, isFile: true))));
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
