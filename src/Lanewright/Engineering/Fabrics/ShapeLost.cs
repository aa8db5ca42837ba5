using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A shape without an option.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Reason">The first thing that rules it out, in a few words.</param>
/// <param name="Bound">Where a better option rules it out: no design of the shape costs less over the years; null otherwise.</param>
public sealed record ShapeLost(FabricShape Shape, string Reason, Money? Bound);
