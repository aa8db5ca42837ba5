using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Model.Labels;

namespace Lanewright.Deliverables.Labels;

/// <summary>A line of a printed label.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Y">Where its letters stand, in mm below the upper edge.</param>
/// <param name="Size">Size of its letters, in mm.</param>
/// <param name="IsBold">Whether they are bold.</param>
internal readonly record struct LabelLine(string Text, double Y, double Size, bool IsBold)
{
    /// <summary>Room at the sides, in mm.</summary>
    public const double Inset = 1.5;

    /// <summary>Letters smaller than this are not read on a rack, in mm: 5 pt. Common practice.</summary>
    public const double Readable = 1.8;

    private const double Largest = 4.2;
    private const double SmallShare = 0.72;
    private const double Leading = 0.8;
    private const double ThreeLines = 0.27;
    private const double TwoLines = 0.4;

    /// <summary>The lines of a label, letters as large as the widest line and the height leave them. A label too low for the third line,
    /// in small letters, goes without it: the table holds it.</summary>
    public static ImmutableArray<LabelLine> Of(LabelSheet sheet, PrintedLabel label)
    {
        var (room, height) = (Math.Max(0.1, sheet.Width.Millimetres - (2 * Inset)), sheet.Height.Millimetres);
        var size = Math.Min(Largest, height * ThreeLines * Leading);
        var isLow = size * SmallShare < Readable;
        var share = isLow ? TwoLines : ThreeLines;
        if (isLow) size = Math.Min(Largest, height * share * Leading);
        var lines = ImmutableArray.CreateBuilder<LabelLine>();
        Add(label.First, 1, size, isBold: true);
        Add(label.Second, 2, size, isBold: false);
        if (!isLow) Add(label.Third, 3, size * SmallShare, isBold: false);
        return lines.ToImmutable();

        void Add(string text, int line, double most, bool isBold)
        {
            if (text.Length > 0)
                lines.Add(new LabelLine(text, line * height * share, Math.Min(most, room / TextFit.Width(text, 1, isBold)), isBold));
        }
    }

    /// <summary>Size of the smallest letters of a label, in mm.</summary>
    public static double Smallest(LabelSheet sheet, PrintedLabel label) =>
        Of(sheet, label).Select(l => l.Size).DefaultIfEmpty(Largest).Min();
}
