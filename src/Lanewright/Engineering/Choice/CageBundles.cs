using Lanewright.Model;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Choice;

/// <summary>Links that leave one split cage share its module or its cable. A bundle is the links of one split cage; where both
/// ends are split, of the first end's cage.</summary>
public sealed class CageBundles
{
    private readonly int[] bundleOf;
    private readonly FanShape[] shapeOf;

    private CageBundles(int[] bundleOf, FanShape[] shapeOf, int count)
    {
        this.bundleOf = bundleOf;
        this.shapeOf = shapeOf;
        Count = count;
    }

    /// <summary>How many bundles there are.</summary>
    public int Count { get; }

    /// <summary>Bundle of a link, or -1 when neither cage is split.</summary>
    public int BundleOf(int link) => bundleOf[link];

    /// <summary>How the cages of a link are split.</summary>
    public FanShape ShapeOf(int link) => shapeOf[link];

    /// <summary>Finds the bundles of a plan.</summary>
    public static CageBundles Of(Plan plan)
    {
        var links = plan.Links;
        var bundleOf = new int[links.Count];
        var shapeOf = new FanShape[links.Count];
        var byCage = new Dictionary<(int Device, short Cage), int>();
        // The only partner cage of a split cage, or -1 when it has several.
        var partner = new Dictionary<(int Device, short Cage), (int Device, short Cage)>();
        for (var link = 0; link < links.Count; link++)
        {
            var from = (links.FromDevice(link), links.FromPort(link).Cage);
            var to = (links.ToDevice(link), links.ToPort(link).Cage);
            if (links.FromPort(link).Ways > 1) Note(partner, from, to);
            if (links.ToPort(link).Ways > 1) Note(partner, to, from);
        }
        for (var link = 0; link < links.Count; link++)
        {
            var shape = Shape(links, link, partner);
            shapeOf[link] = shape;
            bundleOf[link] = -1;
            if (shape == FanShape.Single) continue;
            var cage = shape == FanShape.ToEnd
                ? (links.ToDevice(link), links.ToPort(link).Cage)
                : (links.FromDevice(link), links.FromPort(link).Cage);
            if (!byCage.TryGetValue(cage, out var bundle)) byCage[cage] = bundle = byCage.Count;
            bundleOf[link] = bundle;
        }
        return new CageBundles(bundleOf, shapeOf, byCage.Count);
    }

    /// <summary>Legs of one fan-out are equally long: each link of a bundle needs what the farthest needs.</summary>
    /// <param name="metres">What each link needs; raised in place.</param>
    /// <param name="isShared">Whether a link runs in one cord with its bundle.</param>
    public void RaiseToLongest(double[] metres, Func<int, bool> isShared)
    {
        var longest = new double[Count];
        Array.Fill(longest, double.NaN);
        for (var link = 0; link < metres.Length; link++)
        {
            var bundle = bundleOf[link];
            if (bundle >= 0 && !(metres[link] <= longest[bundle]) && isShared(link)) longest[bundle] = metres[link];
        }
        for (var link = 0; link < metres.Length; link++)
            if (bundleOf[link] >= 0 && !double.IsNaN(metres[link]) && isShared(link)) metres[link] = longest[bundleOf[link]];
    }

    private static void Note(Dictionary<(int, short), (int, short)> partner, (int, short) cage, (int, short) other)
    {
        if (!partner.TryAdd(cage, other) && partner[cage] != other) partner[cage] = (-1, 0);
    }

    private static FanShape Shape(LinkTable links, int link, Dictionary<(int, short), (int, short)> partner)
    {
        var from = links.FromPort(link);
        var to = links.ToPort(link);
        if (from.Ways == 1 && to.Ways == 1) return FanShape.Single;
        if (to.Ways == 1) return FanShape.FromEnd;
        if (from.Ways == 1) return FanShape.ToEnd;
        var fromCage = (links.FromDevice(link), from.Cage);
        var toCage = (links.ToDevice(link), to.Cage);
        var isStraight = from.Ways == to.Ways && partner[fromCage] == toCage && partner[toCage] == fromCage;
        return isStraight ? FanShape.Straight : FanShape.BothEnds;
    }
}
