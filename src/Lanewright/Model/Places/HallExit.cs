using Lanewright.Quantities;

namespace Lanewright.Model.Places;

/// <summary>A place where cables leave a hall or enter it.</summary>
/// <param name="Name">Its name in the hall; empty for the one that holds where none is named.</param>
/// <param name="X">Along the rows.</param>
/// <param name="Y">Across the rows.</param>
public sealed record HallExit(string Name, Length X, Length Y);
