using System.Collections.Immutable;
using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>How wide the parts of a way are drawn: a trunk and a cord wider than a plug.</summary>
internal sealed class TraceCells
{
    private readonly double[] edges;

    /// <summary>Shares the width of the sheet among the parts.</summary>
    public TraceCells(ImmutableArray<PathElement> elements)
    {
        edges = new double[elements.Length + 1];
        var unit = (Sheet.Width - (2 * Sheet.Margin)) / elements.Sum(e => Share(e.Kind));
        edges[0] = Sheet.Margin;
        for (var i = 0; i < elements.Length; i++) edges[i + 1] = edges[i] + (unit * Share(elements[i].Kind));
    }

    /// <summary>Where a part begins.</summary>
    public double Left(int i) => edges[i];

    /// <summary>Where it ends.</summary>
    public double Right(int i) => edges[i + 1];

    /// <summary>Its middle.</summary>
    public double Middle(int i) => (edges[i] + edges[i + 1]) / 2;

    /// <summary>Its width.</summary>
    public double Width(int i) => edges[i + 1] - edges[i];

    private static double Share(string kind) => kind switch
    {
        "port" => 1.25,
        "module" => 1.5,
        "cord" => 1.6,
        "cassette" => 1.4,
        "trunk" or "cable" => 2.4,
        "connection" => 0.7,
        // The name of its trunk stands under it.
        "splices" => 1.2,
        _ => 0.9,
    };
}
