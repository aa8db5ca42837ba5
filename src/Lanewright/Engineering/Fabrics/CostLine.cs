namespace Lanewright.Engineering.Fabrics;

/// <summary>A cost that grows straight with a price: hundredths of the currency unit.</summary>
/// <param name="AtNothing">Cost where the price is nothing.</param>
/// <param name="PerUnit">What one unit of the price adds.</param>
public readonly record struct CostLine(decimal AtNothing, decimal PerUnit)
{
    /// <summary>The cost at a price.</summary>
    public decimal At(decimal price) => AtNothing + (PerUnit * price);

    /// <summary>Where two lines cross; null when they never do.</summary>
    public decimal? Crossing(CostLine other) =>
        PerUnit == other.PerUnit ? null : (other.AtNothing - AtNothing) / (PerUnit - other.PerUnit);
}
