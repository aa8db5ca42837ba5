using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>What lies in a stretch of a pathway.</summary>
/// <param name="Net">The graph of pathways.</param>
/// <param name="Segment">The stretch, by its number.</param>
/// <param name="Cables">Cables in it.</param>
/// <param name="SquareMillimetres">What their cross-sections add up to.</param>
/// <param name="Unknown">Cables of them whose diameter nobody states; they count for nothing.</param>
public sealed record SegmentFill(WayNet Net, int Segment, int Cables, double SquareMillimetres, int Unknown)
{
    /// <summary>Kilograms that a metre of its cables weighs; those that nobody can weigh are not in it.</summary>
    public double KilogramsAMetre { get; init; }

    /// <summary>How well that is known.</summary>
    public Mark WeightMark { get; init; }

    /// <summary>Cables in it that nobody can weigh: neither their weight nor their diameter is stated.</summary>
    public int Unweighed { get; init; }

    /// <summary>Whether they weigh more than the pathway bears; nothing is, where it does not state what it bears.</summary>
    public bool IsOverloaded => IsMoreThanBorne(Pathway, KilogramsAMetre);

    /// <summary>How well the weight is known, in a word; nothing where no cable lies.</summary>
    public string WeightKnown => Cables == 0 ? "" : Unweighed > 0 ? "unproven" : Marks.Name(WeightMark);

    /// <summary>The stretch.</summary>
    public WaySegment Stretch => Net.Stretches[Segment];

    /// <summary>The pathway.</summary>
    public Pathway Pathway => Stretch.Pathway;

    /// <summary>Share of the cross-section that is taken.</summary>
    public Share Fill => Share.From(SquareMillimetres / AreaOf(Pathway));

    /// <summary>How much of what may be taken is taken.</summary>
    public Share OfMost(StandardsLibrary standards) => Share.From(Fill.Value / Most(standards).Value);

    /// <summary>The most that may be taken: of a duct by the number of cables in it.</summary>
    public Known<double> Most(StandardsLibrary standards) => MostOf(Pathway, Cables, standards);

    /// <summary>The most that may be taken of a pathway with so many cables.</summary>
    public static Known<double> MostOf(Pathway pathway, int cables, StandardsLibrary standards) =>
        MostOf(pathway.IsDuct, cables, standards);

    /// <summary>The most that may be taken of a duct or a tray with so many cables.</summary>
    public static Known<double> MostOf(bool isDuct, int cables, StandardsLibrary standards) => !isDuct
        ? standards.Facility("tray", "most-fill")
        : cables switch
        {
            1 => standards.Facility("duct", "most-fill-1"),
            2 => standards.Facility("duct", "most-fill-2"),
            _ => standards.Facility("duct", "most-fill-more"),
        };

    /// <summary>Whether so many kilograms a metre are more than a pathway bears.</summary>
    public static bool IsMoreThanBorne(Pathway pathway, double kilograms) => kilograms > pathway.LoadRating + Rounding;

    /// <summary>What is taken when planned.</summary>
    public Known<double> Planned(StandardsLibrary standards) =>
        Pathway.IsDuct ? Most(standards) : standards.Facility("tray", "planned-fill");

    /// <summary>Inside cross-section in square millimetres.</summary>
    public static double AreaOf(Pathway pathway) => pathway.IsDuct
        ? Round(pathway.Width)
        : pathway.Width.Millimetres * pathway.Depth.Millimetres;

    /// <summary>Cross-section of a round thing in square millimetres.</summary>
    public static double Round(Length diameter) => Math.PI / 4 * diameter.Millimetres * diameter.Millimetres;

    /// <summary>What sums of many cables may be off by.</summary>
    internal const double Rounding = 1e-9;
}
