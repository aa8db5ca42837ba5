using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>How thick cables are when they are tied together.</summary>
public static class BundleSize
{
    /// <summary>Outside diameter of a round bundle.</summary>
    /// <param name="cable">Diameter of each cable.</param>
    /// <param name="count">How many.</param>
    /// <param name="packing">Share of the bundle's cross-section that its cables take, above 0 and below 1.</param>
    public static Length Of(Length cable, int count, double packing) => count switch
    {
        1 => cable,
        2 => cable * 2,
        _ => cable * Math.Sqrt(count / packing),
    };
}
