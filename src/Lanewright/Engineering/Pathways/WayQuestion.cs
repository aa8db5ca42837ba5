using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Where a way is looked for: from rack to rack in one hall or from one hall to another, in pathways of a side or of
/// none.</summary>
/// <param name="From">Index of the rack of the lower number.</param>
/// <param name="To">Index of the other rack.</param>
/// <param name="Side">Number of the side; 0 for any.</param>
public readonly record struct WayQuestion(int From, int To, int Side)
{
    /// <summary>Height at which a cable leaves the first rack; null where every height has the same shortest way, so that all that leaves
    /// there is one question.</summary>
    public Length? FromHeight { get; init; }

    /// <summary>The same at the other rack.</summary>
    public Length? ToHeight { get; init; }

    /// <summary>The question between two racks, whichever is named first.</summary>
    public static WayQuestion Between(int one, int other, int side) => new(Math.Min(one, other), Math.Max(one, other), side);

    /// <summary>The question between heights in two racks.</summary>
    public static WayQuestion Between((int Rack, Length? Height) one, (int Rack, Length? Height) other, int side)
    {
        var (from, to) = one.Rack <= other.Rack ? (one, other) : (other, one);
        return new WayQuestion(from.Rack, to.Rack, side) { FromHeight = from.Height, ToHeight = to.Height };
    }

    /// <summary>One of the two racks with the height there.</summary>
    internal (int Rack, Length? Height) At(int rack) => rack == From ? (From, FromHeight) : (To, ToHeight);

    /// <summary>The other one.</summary>
    internal (int Rack, Length? Height) Beyond(int rack) => rack == From ? (To, ToHeight) : (From, FromHeight);
}
