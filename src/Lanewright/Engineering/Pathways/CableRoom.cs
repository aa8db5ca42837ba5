using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>How many round cables alike a tray or a duct takes, before anything is planned.</summary>
/// <param name="Width">Inside width of a tray, or inside diameter of a duct; above zero.</param>
/// <param name="Depth">Inside depth of a tray; null for a duct.</param>
/// <param name="Cable">Outside diameter of a cable, above zero.</param>
/// <param name="Cables">Cables to lay; none where only the room is asked for.</param>
/// <param name="Standards">The limits.</param>
public sealed record CableRoom(Length Width, Length? Depth, Length Cable, int Cables, StandardsLibrary Standards)
{
    /// <summary>Whether it is a duct.</summary>
    public bool IsDuct => Depth is null;

    /// <summary>Inside cross-section in square millimetres.</summary>
    public double SquareMillimetres => Depth is { } depth ? Width.Millimetres * depth.Millimetres : SegmentFill.Round(Width);

    /// <summary>Share of the cross-section that the cables take.</summary>
    public Share Fill => Share.From(Cables * SegmentFill.Round(Cable) / SquareMillimetres);

    /// <summary>What is taken when planned; null for a duct, which has a limit only.</summary>
    public Known<double>? Planned => IsDuct ? null : Standards.Facility("tray", "planned-fill");

    /// <summary>The most that so many cables may take.</summary>
    public Known<double> Most => SegmentFill.MostOf(IsDuct, Cables, Standards);

    /// <summary>The most cables that may lie in it. Of a duct one cable may take more of it than two, and two less than three.</summary>
    public int AtMost
    {
        get
        {
            var many = CablesAt(Limit(int.MaxValue));
            return many > Alone ? many : Enumerable.Range(0, Alone + 1).Last(n => n == 0 || n <= CablesAt(Limit(n)));
        }
    }

    /// <summary>Cables that take no more than a share of the cross-section; none where one is too thick to enter.</summary>
    public int CablesAt(double share) => Enters
        ? (int)Math.Min(int.MaxValue, Rounding.Whole(SquareMillimetres * share / SegmentFill.Round(Cable)))
        : 0;

    /// <summary>The cross-section in square millimetres of which the cables take a share.</summary>
    public double WantedFor(double share) => Cables * SegmentFill.Round(Cable) / share;

    /// <summary>Inside diameter over that of a cable, where three lie in a duct; null elsewhere.</summary>
    public double? Jam => IsDuct && Cables == JamRatio.Cables ? JamRatio.Of(Width, Cable) : null;

    /// <summary>Whether a cable is no thicker than the inside is wide and deep.</summary>
    public bool Enters => !Rounding.IsAbove(Cable.Millimetres, Math.Min(Width.Millimetres, (Depth ?? Width).Millimetres));

    /// <summary>Whether the cables may lie in it.</summary>
    public bool Holds => Enters && !Rounding.IsAbove(Fill.Value, Most.Value);

    private double Limit(int cables) => SegmentFill.MostOf(IsDuct, cables, Standards).Value;

    /// <summary>So many cables have a limit of a duct for their number.</summary>
    private const int Alone = 2;
}
