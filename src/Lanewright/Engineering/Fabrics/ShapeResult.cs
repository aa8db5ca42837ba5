namespace Lanewright.Engineering.Fabrics;

/// <summary>What the search through one shape came to.</summary>
/// <param name="Best">The best design that keeps the wishes; null when there is none.</param>
/// <param name="Bound">Hundredths that no design which keeps the wishes goes below; not a number when there is none.</param>
/// <param name="Reason">Where there is none: what is in the way.</param>
internal sealed record ShapeResult(PricedDesign? Best, double Bound, string Reason)
{
    /// <summary>Parts of the search that were looked into, and what pricing designs counts beside.</summary>
    public long Looked { get; init; }

    /// <summary>A shape with nothing to search.</summary>
    public static ShapeResult None(string reason) => new(null, double.NaN, reason);
}
