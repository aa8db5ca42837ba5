using Lanewright.Model.Catalogues;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>What lies in each stretch while cables are laid, and whether one more has room: in its cross-section and by what it
/// bears.</summary>
internal sealed class StretchRoom
{
    private readonly WayNet net;
    private readonly StandardsLibrary standards;
    private readonly double[] most;
    private readonly Dictionary<CableItem, Known<double>?> weights = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int Body, int Stretch), int> legs = [];

    public StretchRoom(WayNet net, StandardsLibrary standards)
    {
        this.net = net;
        this.standards = standards;
        var count = net.Stretches.Length;
        (Cables, Area, Unknown) = (new int[count], new double[count], new int[count]);
        (Kilograms, Marks, Unweighed) = (new double[count], new Mark[count], new int[count]);
        most = [.. net.Stretches.SelectMany(s => MostOf(s.Pathway))];
    }

    /// <summary>Cables in each stretch.</summary>
    public int[] Cables { get; }

    /// <summary>Square millimetres they take.</summary>
    public double[] Area { get; }

    /// <summary>Cables whose diameter nobody states.</summary>
    public int[] Unknown { get; }

    /// <summary>What a metre weighs.</summary>
    public double[] Kilograms { get; }

    /// <summary>How well that is known.</summary>
    public Mark[] Marks { get; }

    /// <summary>Cables that nobody can weigh.</summary>
    public int[] Unweighed { get; }

    /// <summary>Lays a cable, or takes it out again.</summary>
    public void Lay(CableWay way, CablePiece piece, int times)
    {
        var weight = WeightOf(piece);
        foreach (var stretch in way.Stretches)
        {
            if (piece.Body >= 0 && !IsOutermost(piece.Body, stretch, times)) continue;
            Kilograms[stretch] += (weight?.Value ?? 0) * times;
            if (weight is { } known && known.Source.Mark > Marks[stretch]) Marks[stretch] = known.Source.Mark;
            Cables[stretch] += times;
            Area[stretch] += piece.Area * times;
            if (piece.Item.Diameter.Metres <= 0) Unknown[stretch] += times;
            if (weight is null) Unweighed[stretch] += times;
        }
    }

    /// <summary>Legs of one cable take room once: with the first of them that is laid, until the last is taken out.</summary>
    private bool IsOutermost(int body, int stretch, int times)
    {
        var before = legs.GetValueOrDefault((body, stretch));
        legs[(body, stretch)] = before + times;
        return before == 0 || before + times == 0;
    }

    /// <summary>Whether a stretch holds more than it may, or more than it bears.</summary>
    public bool IsOver(int stretch) => IsOverfull(stretch) || IsOverloaded(stretch);

    /// <summary>Whether a stretch holds more than it may.</summary>
    public bool IsOverfull(int stretch) => Area[stretch] > Most(stretch, Cables[stretch]);

    /// <summary>Whether one more cable has room.</summary>
    public bool HasRoom(int stretch, in CablePiece piece) => Area[stretch] + piece.Area <= Most(stretch, Cables[stretch] + 1)
        && !SegmentFill.IsMoreThanBorne(net.Stretches[stretch].Pathway, Kilograms[stretch] + KilogramsOf(piece));

    /// <summary>Square millimetres that a stretch with too much in it gains when a cable leaves; where it bears too much, a share of the
    /// rating counts as that share of the room.</summary>
    public double GainOf(int stretch, in CablePiece piece) =>
        IsOverloaded(stretch) && net.Stretches[stretch].Pathway.LoadRating is { } bears
            ? Math.Max(IsOverfull(stretch) ? piece.Area : 0, KilogramsOf(piece) / bears * Most(stretch, Cables[stretch]))
            : piece.Area;

    /// <summary>Stretches that hold more than they may, in order.</summary>
    public IEnumerable<int> Over() => Enumerable.Range(0, net.Stretches.Length).Where(IsOver);

    private bool IsOverloaded(int stretch) => SegmentFill.IsMoreThanBorne(net.Stretches[stretch].Pathway, Kilograms[stretch]);

    private double KilogramsOf(in CablePiece piece) => WeightOf(piece)?.Value ?? 0;

    private Known<double>? WeightOf(in CablePiece piece)
    {
        if (!weights.TryGetValue(piece.Item, out var weight)) weights[piece.Item] = weight = CableWeight.AMetreOf(piece.Item, standards);
        return weight;
    }

    private double Most(int stretch, int cables) => most[(stretch * Limits) + Math.Min(cables, Limits - 1)];

    /// <summary>The most that may be taken with no cable, with one, two, and more.</summary>
    private IEnumerable<double> MostOf(Model.Places.Pathway pathway) => Enumerable.Range(0, Limits)
        .Select(cables => (SegmentFill.AreaOf(pathway) * SegmentFill.MostOf(pathway, cables, standards).Value) + SegmentFill.Rounding);

    /// <summary>A duct has a limit for one cable, one for two and one for more.</summary>
    private const int Limits = 4;
}
