using Lanewright.Model.Places;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>How a page shows a floor: with racks that lead somewhere, and some of them marked.</summary>
/// <param name="Marked">The racks that stand out.</param>
/// <param name="Address">Where a rack leads; empty for nowhere.</param>
internal sealed record FloorView(IReadOnlySet<Rack> Marked, Func<Rack, string> Address);
