using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What decides how a link is made.</summary>
/// <param name="From">Number of the kind of cage at the lower end.</param>
/// <param name="FromMode">How it is split.</param>
/// <param name="To">Number of the kind of cage at the upper end.</param>
/// <param name="ToMode">How it is split.</param>
/// <param name="Place">Place of the length in the grid of lengths.</param>
/// <param name="IsFromRaised">Whether the lower cage is one with the raised power limit.</param>
/// <param name="IsToRaised">Whether the upper cage is.</param>
/// <param name="FromRack">Kind of rack at the lower end.</param>
/// <param name="ToRack">Kind of rack at the upper end.</param>
internal readonly record struct LinkKey(
    int From, PortMode FromMode, int To, PortMode ToMode, int Place, bool IsFromRaised, bool IsToRaised,
    RackType? FromRack, RackType? ToRack);
