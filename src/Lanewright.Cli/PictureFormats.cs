using Lanewright.Deliverables;
using Lanewright.Print;

namespace Lanewright.Cli;

/// <summary>Drawings in the formats a person asked for. SVG is always written: it is what the others are made from.</summary>
internal static class PictureFormats
{
    /// <summary>The names of the formats.</summary>
    public static IReadOnlyList<string> All { get; } = ["svg", "png", "pdf"];

    private const string Drawing = ".svg";

    /// <summary>The formats named in an option, separated by commas.</summary>
    public static IReadOnlySet<string> Read(string? option)
    {
        var named = (option ?? All[0]).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (named.Length == 0) throw new UsageFault($"--format names no format; write one or several of {string.Join(", ", All)}");
        foreach (var format in named)
            if (!All.Contains(format)) throw new UsageFault($"'{format}' is no format of drawings; there are {string.Join(", ", All)}");
        return named.ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The documents with those that were asked for besides: a PNG for each drawing, one PDF with a page for each.</summary>
    /// <param name="documents">What is delivered anyway.</param>
    /// <param name="formats">What was asked for.</param>
    /// <param name="title">Title of the PDF.</param>
    public static IReadOnlyList<Deliverable> With(IReadOnlyList<Deliverable> documents, IReadOnlySet<string> formats, string title)
    {
        var drawings = documents.Where(d => d.Name.EndsWith(Drawing, StringComparison.Ordinal)).ToList();
        var all = documents.ToList();
        if (formats.Contains("png"))
        {
            all.AddRange(drawings.Select(d => new Deliverable(d.Name[..^Drawing.Length] + ".png", stream =>
            {
                using var svg = Drawn(d);
                DrawingPrinter.Png(svg, stream);
            })));
        }
        if (formats.Contains("pdf") && drawings.Count > 0)
        {
            all.Add(new Deliverable("drawings.pdf", stream =>
                DrawingPrinter.Pdf(title, drawings.Select(d => (Func<Stream>)(() => Drawn(d))), stream)));
        }
        return all;
    }

    private static MemoryStream Drawn(Deliverable drawing)
    {
        var stream = new MemoryStream();
        drawing.Write(stream);
        stream.Position = 0;
        return stream;
    }
}
