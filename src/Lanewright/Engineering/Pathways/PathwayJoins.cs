using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>Where straight pathways of one hall meet: both are cut there, at one height or at two with a drop between.</summary>
/// <param name="dropOut">Metres of height that cables fall from one tray on to another without a riser.</param>
internal sealed class PathwayJoins(double dropOut)
{
    /// <summary>Metres below which points are one.</summary>
    public const double Touch = 1e-3;

    private readonly List<(WayPoint High, WayPoint Low)> drops = [];

    /// <summary>Falls from one pathway on to another.</summary>
    public IReadOnlyList<(WayPoint High, WayPoint Low)> Drops => drops;

    /// <summary>Where each pathway begins and ends.</summary>
    public static List<WayPoint>[] Ends(ImmutableArray<Pathway> pathways) =>
        [.. pathways.Select(p => new List<WayPoint> { Start(p), End(p) })];

    /// <summary>Where it begins.</summary>
    public static WayPoint Start(Pathway pathway) => new(pathway.FromX.Metres, pathway.FromY.Metres, pathway.FromHeight.Metres);

    /// <summary>Where it ends.</summary>
    public static WayPoint End(Pathway pathway) => new(pathway.ToX.Metres, pathway.ToY.Metres, pathway.ToHeight.Metres);

    /// <summary>The point of a pathway that is nearest to a place in plan; of a riser the nearest in height. A closed duct is entered at
    /// its ends only.</summary>
    public static WayPoint Nearest(Pathway pathway, WayPoint place)
    {
        var (a, b) = (Start(pathway), End(pathway));
        if (pathway.IsDuct) return place.FlatTo(a) <= place.FlatTo(b) ? a : b;
        if (pathway.IsRiser) return a with { Z = Math.Clamp(place.Z, Math.Min(a.Z, b.Z), Math.Max(a.Z, b.Z)) };
        var length = a.FlatTo(b);
        return Along(a, b, Math.Clamp((((place.X - a.X) * (b.X - a.X)) + ((place.Y - a.Y) * (b.Y - a.Y))) / (length * length), 0, 1));
    }

    /// <summary>Whether cables get to a point along a pathway: a closed duct leads to its ends only.</summary>
    public static bool LeadsTo(Pathway pathway, WayPoint point) => Nearest(pathway, point).To(point) <= Touch;

    /// <summary>Whether two trays run in one direction; a duct or a riser does so with none.</summary>
    public static bool AreParallel(Pathway one, Pathway other)
    {
        if (one.IsDuct || other.IsDuct || one.IsRiser || other.IsRiser) return false;
        var (a, b) = (Flat(one), Flat(other));
        return Math.Abs((a.X * b.Y) - (a.Y * b.X)) <= Touch;
    }

    /// <summary>Whether two parallel trays are side by side where cables of one place come down to both: of trays in line, one of which
    /// ends before the other begins, only one is beside it.</summary>
    public static bool AreBeside(Pathway one, WayPoint atOne, WayPoint atOther)
    {
        var along = Flat(one);
        return Math.Abs((along.X * (atOther.X - atOne.X)) + (along.Y * (atOther.Y - atOne.Y))) <= Touch;
    }

    /// <summary>Direction in plan, of length 1.</summary>
    private static (double X, double Y) Flat(Pathway pathway)
    {
        var (start, end) = (Start(pathway), End(pathway));
        var length = start.FlatTo(end);
        return ((end.X - start.X) / length, (end.Y - start.Y) / length);
    }

    /// <summary>Cuts two pathways where they cross or touch; those of two sides stay apart.</summary>
    public void Cross(Pathway one, Pathway other, List<WayPoint> ofOne, List<WayPoint> ofOther)
    {
        if (one.Side.Length > 0 && other.Side.Length > 0 && one.Side != other.Side) return;
        // An end that lies on the other pathway joins it even where the two are parallel.
        foreach (var end in new[] { Start(one), End(one) }) MeetAt(one, other, end, ofOne, ofOther);
        foreach (var end in new[] { Start(other), End(other) }) MeetAt(other, one, end, ofOther, ofOne);
        if (one.IsRiser || other.IsRiser || one.IsDuct || other.IsDuct) return;
        var (a, b, c, d) = (Start(one), End(one), Start(other), End(other));
        var across = ((b.X - a.X) * (d.Y - c.Y)) - ((b.Y - a.Y) * (d.X - c.X));
        if (Math.Abs(across) < Touch * Touch) return;
        var t = (((c.X - a.X) * (d.Y - c.Y)) - ((c.Y - a.Y) * (d.X - c.X))) / across;
        var u = (((c.X - a.X) * (b.Y - a.Y)) - ((c.Y - a.Y) * (b.X - a.X))) / across;
        if (t is >= 0 and <= 1 && u is >= 0 and <= 1) Join(Along(a, b, t), Along(c, d, u), ofOne, ofOther);
    }

    /// <summary>An end of a pathway that lies above, on or below another.</summary>
    private void MeetAt(Pathway own, Pathway other, WayPoint end, List<WayPoint> ofOwn, List<WayPoint> ofOther)
    {
        var at = Nearest(other, end);
        if (at.FlatTo(end) > Touch) return;
        // A riser is met at the height of the other wherever it passes it.
        Join(own.IsRiser ? Nearest(own, at) : end, at with { X = end.X, Y = end.Y }, ofOwn, ofOther);
    }

    private void Join(WayPoint one, WayPoint other, List<WayPoint> ofOne, List<WayPoint> ofOther)
    {
        var fall = Math.Abs(one.Z - other.Z);
        if (fall > dropOut + Touch) return;
        ofOne.Add(one);
        ofOther.Add(fall <= Touch ? one : other);
        if (fall > Touch) drops.Add(one.Z > other.Z ? (one, other) : (other, one));
    }

    private static WayPoint Along(WayPoint a, WayPoint b, double share) =>
        new(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)), a.Z + (share * (b.Z - a.Z)));
}
