using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Where the boxes of a picture of a fabric stand: tiers as rows, hosts at the foot. Switches of a tier that are linked to one
/// another rather than upwards stand in a ring, where their links do not lie on one another.</summary>
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

    private const int FewestInRing = 4;
    private const int MostInRing = 16;
    private const double RingHalf = 40;
    private const double RingEach = 14;
    private const double RingWide = 2.2;
    private const double RingBox = 96;

    private readonly double[] centre;
    private readonly double[] top;
    private readonly HashSet<int> rings = [];
    private readonly double[] width;
    private readonly Dictionary<int, double> topOfTier = [];
    private readonly Dictionary<int, double> heightOfTier = [];

    private FabricLayout(int nodes)
    {
        centre = new double[nodes];
        width = new double[nodes];
        top = new double[nodes];
    }

    /// <summary>Where the lowest row ends.</summary>
    public double Bottom { get; private set; }

    /// <summary>The tiers drawn, uppermost first.</summary>
    public ImmutableArray<int> Tiers { get; private set; } = [];

    /// <summary>Middle of a box.</summary>
    public double Centre(int node) => centre[node];

    /// <summary>Width of a box.</summary>
    public double Width(int node) => width[node];

    /// <summary>Upper edge of a box.</summary>
    public double TopOf(int node) => top[node];

    /// <summary>Whether the boxes of a tier stand in a ring.</summary>
    public bool IsRing(int tier) => rings.Contains(tier);

    /// <summary>Upper edge of a row.</summary>
    public double Top(int tier) => topOfTier[tier];

    /// <summary>Height of the boxes of a row.</summary>
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
            if (IsMeshed(picture, tier.Key, nodes.Count))
            {
                layout.Ring(tier.Key, nodes, y);
                y = layout.Bottom + Between;
                continue;
            }
            const double room = Sheet.Width - Sheet.Margin - Left;
            var pitch = room / nodes.Count;
            var box = Math.Min(WidestBox, pitch - Gap);
            for (var i = 0; i < nodes.Count; i++)
                (layout.centre[nodes[i]], layout.width[nodes[i]], layout.top[nodes[i]]) = (Left + (pitch * (i + 0.5)), box, y);
            layout.topOfTier[tier.Key] = y;
            layout.heightOfTier[tier.Key] = box < LeastForWords ? HighBox : LowBox;
            layout.Bottom = y + layout.heightOfTier[tier.Key];
            y = layout.Bottom + Between;
        }
        layout.Tiers = [.. tiers.Select(t => t.Key)];
        return layout;
    }

    /// <summary>Whether the switches of a tier are linked to one another more than in pairs.</summary>
    private static bool IsMeshed(FabricPicture picture, int tier, int boxes) => tier > 0 && boxes is >= FewestInRing and <= MostInRing
        && picture.Edges.Count(e => e.Upper != e.Lower && picture.Nodes[e.Upper].Tier == tier && picture.Nodes[e.Lower].Tier == tier)
            > boxes / 2;

    private void Ring(int tier, List<int> nodes, double y)
    {
        rings.Add(tier);
        var half = RingHalf + (RingEach * nodes.Count);
        for (var i = 0; i < nodes.Count; i++)
        {
            // An even ring is turned by half a step, so that no box hides what goes straight down from another.
            var turn = i + (nodes.Count % 2 == 0 ? 0.5 : 0);
            var (sine, cosine) = Math.SinCos((2 * Math.PI * turn / nodes.Count) - (Math.PI / 2));
            centre[nodes[i]] = ((Left + Sheet.Width - Sheet.Margin) / 2) + (half * RingWide * cosine);
            width[nodes[i]] = RingBox;
            top[nodes[i]] = y + (half * (1 + sine));
        }
        topOfTier[tier] = y;
        heightOfTier[tier] = LowBox;
        Bottom = y + (2 * half) + LowBox;
    }
}
