using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Places;

/// <summary>A straight tray or duct in a hall. Pathways that cross or touch are joined there.</summary>
/// <param name="Hall">The hall.</param>
/// <param name="Name">Its name in the hall.</param>
/// <param name="FromX">Where it begins, along the rows.</param>
/// <param name="FromY">Where it begins, across the rows.</param>
/// <param name="ToX">Where it ends, along the rows.</param>
/// <param name="ToY">Where it ends, across the rows.</param>
/// <param name="Width">Inside width; of a duct its inside diameter.</param>
/// <param name="Depth">Inside depth; of a duct its inside diameter.</param>
/// <param name="IsDuct">Whether it is round and closed.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record Pathway(
    Hall Hall, string Name, Length FromX, Length FromY, Length ToX, Length ToY, Length Width, Length Depth, bool IsDuct, SourceSpan Span);
