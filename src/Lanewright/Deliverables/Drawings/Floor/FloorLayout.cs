using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>How a hall lies on a sheet: with its long side across it, and a hall far longer than wide cut into strips one below the
/// other, so that the scale is as large as the sheet allows.</summary>
internal sealed class FloorLayout
{
    private const double Gap = 34;

    /// <summary>Half of what lies between two strips.</summary>
    public const double HalfGap = Gap / 2;

    private const int MostStrips = 6;

    /// <summary>Strips must make the scale so much larger to be worth the cuts.</summary>
    private const double Worthwhile = 1.6;

    /// <summary>Rows run along the sheet unless turning them makes the scale so much larger.</summary>
    private const double WorthTurning = 1.2;

    private readonly double left;
    private readonly double back;
    private readonly double metres;
    private readonly double length;

    /// <summary>Chooses orientation, strips and scale.</summary>
    /// <param name="left">Least position along the rows, in metres.</param>
    /// <param name="back">Least position across them.</param>
    /// <param name="metres">Extent along the rows.</param>
    /// <param name="deep">Extent across them.</param>
    /// <param name="room">Width of the sheet that may be used.</param>
    /// <param name="mostHeight">Height of the sheet that may be used.</param>
    public FloorLayout(double left, double back, double metres, double deep, double room, double mostHeight)
    {
        (this.left, this.back, this.metres) = (left, back, metres);
        var upright = Math.Min(room / metres, mostHeight / deep);
        var turned = Math.Min(room / deep, mostHeight / metres);
        IsTurned = turned > upright * WorthTurning;
        (length, var breadth) = IsTurned ? (deep, metres) : (metres, deep);
        (Strips, Scale) = (1, IsTurned ? turned : upright);
        for (var strips = 2; strips <= MostStrips; strips++)
        {
            var scale = Math.Min(room / (length / strips), (mostHeight - (Gap * (strips - 1))) / (breadth * strips));
            if (scale > Scale * (Strips == 1 ? Worthwhile : 1)) (Strips, Scale) = (strips, scale);
        }
        StripHeight = breadth * Scale;
    }

    /// <summary>Whether the rows run up the sheet.</summary>
    public bool IsTurned { get; }

    /// <summary>Strips the hall is cut into.</summary>
    public int Strips { get; }

    /// <summary>Units of the sheet for a metre.</summary>
    public double Scale { get; }

    /// <summary>Height of one strip on the sheet.</summary>
    public double StripHeight { get; }

    /// <summary>Width of one strip on the sheet.</summary>
    public double Width => length / Strips * Scale;

    /// <summary>Height of all strips.</summary>
    public double Height => (StripHeight * Strips) + (Gap * (Strips - 1));

    /// <summary>Upper edge of a strip.</summary>
    public double TopOf(int strip) => Sheet.Top + (strip * (StripHeight + Gap));

    /// <summary>The strip a place lies in.</summary>
    public int StripOf(double x, double y) => Math.Clamp((int)(Along(x, y) / (length / Strips)), 0, Strips - 1);

    /// <summary>A place on the sheet, in its own strip.</summary>
    public (double X, double Y) At(double x, double y) => At(x, y, StripOf(x, y));

    /// <summary>A place on the sheet as a strip shows it.</summary>
    public (double X, double Y) At(double x, double y, int strip) => (
        Sheet.Margin + ((Along(x, y) - (strip * length / Strips)) * Scale),
        TopOf(strip) + ((IsTurned ? left + metres - x : y - back) * Scale));

    /// <summary>A straight line cut where strips end.</summary>
    public ImmutableArray<(double X1, double Y1, double X2, double Y2)> Line(double x1, double y1, double x2, double y2)
    {
        var (a, b, part) = (Along(x1, y1), Along(x2, y2), length / Strips);
        var (first, last) = (StripOf(x1, y1), StripOf(x2, y2));
        var pieces = ImmutableArray.CreateBuilder<(double, double, double, double)>();
        for (var strip = Math.Min(first, last); strip <= Math.Max(first, last); strip++)
        {
            var (from, to) = (Share(strip * part), Share((strip + 1) * part));
            if (a > b) (from, to) = (to, from);
            if (strip == first) from = 0;
            if (strip == last) to = 1;
            var (start, end) = (At(X(from), Y(from), strip), At(X(to), Y(to), strip));
            pieces.Add((start.X, start.Y, end.X, end.Y));
        }
        return pieces.ToImmutable();

        double Share(double along) => a == b ? 0 : Math.Clamp((along - a) / (b - a), 0, 1);

        double X(double share) => x1 + (share * (x2 - x1));

        double Y(double share) => y1 + (share * (y2 - y1));
    }

    private double Along(double x, double y) => IsTurned ? y - back : x - left;
}
