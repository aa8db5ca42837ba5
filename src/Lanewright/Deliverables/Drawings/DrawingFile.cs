using System.Text;
using Lanewright.Deliverables.Markup;

namespace Lanewright.Deliverables.Drawings;

/// <summary>A drawing as a file of its own.</summary>
internal static class DrawingFile
{
    /// <summary>The file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="draw">Writes the drawing.</param>
    public static Deliverable Of(string name, Action<MarkupWriter> draw) => new(name, stream =>
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 14, leaveOpen: true);
        writer.Write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        draw(new MarkupWriter(writer));
    });
}
