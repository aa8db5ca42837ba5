using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Places;

/// <summary>A site: a place with halls, or one where lines meet.</summary>
/// <param name="Index">Its number in the plan.</param>
/// <param name="Name">Its name.</param>
/// <param name="East">How far east it lies of a point of the plan's own; null when not said.</param>
/// <param name="North">How far north; null when not said.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record Site(int Index, string Name, Length? East, Length? North, SourceSpan Span)
{
    /// <summary>Share of time in which it works: power, cooling, entries and all; null for that of the policy.</summary>
    public Share? Availability { get; init; }
}
