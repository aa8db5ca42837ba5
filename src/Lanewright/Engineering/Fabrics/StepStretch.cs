namespace Lanewright.Engineering.Fabrics;

/// <summary>Values of a quantity from one to another, both included.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
/// <param name="Winner">What wins there: at all values where it is proven, otherwise at those that were asked.</param>
/// <param name="IsProven">Whether it is proven at every value.</param>
internal sealed record StepStretch(int From, int To, Winner Winner, bool IsProven);
