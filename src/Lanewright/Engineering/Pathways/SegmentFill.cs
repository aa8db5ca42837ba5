using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>What lies in a stretch of a pathway.</summary>
/// <param name="Ways">The hall.</param>
/// <param name="Segment">The stretch, by its number.</param>
/// <param name="Cables">Cables in it.</param>
/// <param name="SquareMillimetres">What their cross-sections add up to.</param>
/// <param name="Unknown">Cables of them whose diameter nobody states; they count for nothing.</param>
public sealed record SegmentFill(HallWays Ways, int Segment, int Cables, double SquareMillimetres, int Unknown)
{
    /// <summary>The pathway.</summary>
    public Pathway Pathway => Ways.Graph.Segments[Segment].Pathway;

    /// <summary>Share of the cross-section that is taken.</summary>
    public Share Fill => Share.From(SquareMillimetres / Area(Pathway));

    /// <summary>The most that may be taken: of a duct by the number of cables in it.</summary>
    public Known<double> Most(StandardsLibrary standards) => !Pathway.IsDuct
        ? standards.Facility("tray", "most-fill")
        : Cables switch
        {
            1 => standards.Facility("duct", "most-fill-1"),
            2 => standards.Facility("duct", "most-fill-2"),
            _ => standards.Facility("duct", "most-fill-more"),
        };

    /// <summary>What is taken when planned.</summary>
    public Known<double> Planned(StandardsLibrary standards) =>
        Pathway.IsDuct ? Most(standards) : standards.Facility("tray", "planned-fill");

    /// <summary>Inside cross-section in square millimetres.</summary>
    public static double Area(Pathway pathway) => pathway.IsDuct
        ? Round(pathway.Width)
        : pathway.Width.Millimetres * pathway.Depth.Millimetres;

    /// <summary>Cross-section of a round thing in square millimetres.</summary>
    public static double Round(Length diameter) => Math.PI / 4 * diameter.Millimetres * diameter.Millimetres;
}
