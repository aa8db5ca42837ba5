namespace Lanewright.Text;

/// <summary>A place in a file as an editor shows it.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, in characters.</param>
public readonly record struct LinePosition(int Line, int Column) : IComparable<LinePosition>
{
    /// <inheritdoc/>
    public int CompareTo(LinePosition other) =>
        Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);

    /// <summary>Whether the left place comes first.</summary>
    public static bool operator <(LinePosition left, LinePosition right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left place comes last.</summary>
    public static bool operator >(LinePosition left, LinePosition right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left place does not come last.</summary>
    public static bool operator <=(LinePosition left, LinePosition right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left place does not come first.</summary>
    public static bool operator >=(LinePosition left, LinePosition right) => left.CompareTo(right) >= 0;
}
