using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>A type of cable, adapter, duplex cord or transition as far as it leads positions to positions.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its type, such as <c>B</c>, <c>A-to-A</c> or <c>U1</c>.</param>
/// <param name="Map">How it leads.</param>
/// <param name="TakesAngled">Whether angled ends may meet in it.</param>
/// <param name="IsOrderKnown">Whether the order of its duplex side is known, and not only what pairs with what.</param>
/// <param name="Source">Who says so.</param>
public sealed record ArrayPart(
    ArrayPartKind Kind, string Name, ArrayMap Map, bool TakesAngled, bool IsOrderKnown, Citation Source)
{
    /// <summary>What it is and its type: types of cables and adapters share their letters.</summary>
    public string Words => $"{Kind.ToString().ToLowerInvariant()} {Name}";
}
