using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Where the boxes of a picture of a fabric stand: tiers as rows, hosts at the foot.</summary>
internal sealed class FabricLayout
{
    /// <summary>Where the boxes begin, right of the words about each tier.</summary>
    public const double Left = 176;

    /// <summary>Height of a box with its words side by side.</summary>
    public const double LowBox = 40;

    /// <summary>Height of a box whose name runs upwards.</summary>
    public const double HighBox = 92;

    private const double First = Sheet.Top + 74;
    private const double Between = 128;
    private const double WidestBox = 132;
    private const double Gap = 8;
    private const double LeastForWords = 66;

    private readonly double[] centre;
    private readonly double[] width;
    private readonly Dictionary<int, double> topOfTier = [];
    private readonly Dictionary<int, double> heightOfTier = [];

    private FabricLayout(int nodes)
    {
        centre = new double[nodes];
        width = new double[nodes];
    }

    /// <summary>Where the lowest row ends.</summary>
    public double Bottom { get; private set; }

    /// <summary>The tiers drawn, uppermost first.</summary>
    public ImmutableArray<int> Tiers { get; private set; } = [];

    /// <summary>Middle of a box.</summary>
    public double Centre(int node) => centre[node];

    /// <summary>Width of a box.</summary>
    public double Width(int node) => width[node];

    /// <summary>Upper edge of a row.</summary>
    public double Top(int tier) => topOfTier[tier];

    /// <summary>Height of a row.</summary>
    public double Height(int tier) => heightOfTier[tier];

    /// <summary>Places the boxes.</summary>
    public static FabricLayout Of(FabricPicture picture)
    {
        var layout = new FabricLayout(picture.Nodes.Length);
        var y = First;
        var tiers = picture.Nodes.Select((node, index) => (node.Tier, index)).GroupBy(n => n.Tier, n => n.index)
            .OrderByDescending(t => t.Key).ToList();
        foreach (var tier in tiers)
        {
            var nodes = tier.ToList();
            const double room = Sheet.Width - Sheet.Margin - Left;
            var pitch = room / nodes.Count;
            var box = Math.Min(WidestBox, pitch - Gap);
            for (var i = 0; i < nodes.Count; i++)
                (layout.centre[nodes[i]], layout.width[nodes[i]]) = (Left + (pitch * (i + 0.5)), box);
            layout.topOfTier[tier.Key] = y;
            layout.heightOfTier[tier.Key] = box < LeastForWords ? HighBox : LowBox;
            layout.Bottom = y + layout.heightOfTier[tier.Key];
            y = layout.Bottom + Between;
        }
        layout.Tiers = [.. tiers.Select(t => t.Key)];
        return layout;
    }
}
