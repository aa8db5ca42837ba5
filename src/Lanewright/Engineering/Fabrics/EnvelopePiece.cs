namespace Lanewright.Engineering.Fabrics;

/// <summary>A stretch of prices over which one answer is the cheapest.</summary>
/// <typeparam name="T">What tells answers apart.</typeparam>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends, and the next begins.</param>
/// <param name="Line">What the answer costs.</param>
/// <param name="Answer">The answer.</param>
public sealed record EnvelopePiece<T>(decimal From, decimal To, CostLine Line, T Answer);
