namespace Lanewright.Engineering.Fabrics;

/// <summary>A quantity that may turn out other than it was put into the question.</summary>
public enum BreakEvenQuantity
{
    /// <summary>Prices of all modules, as times what the catalogue says.</summary>
    ModulePrice,

    /// <summary>Price of a kilowatt-hour.</summary>
    EnergyPrice,

    /// <summary>Growth a year, in per cent.</summary>
    Growth,

    /// <summary>Oversubscription at the leaves, to one; tiers above keep their proportion to it.</summary>
    Oversubscription,

    /// <summary>Hosts at the start.</summary>
    Hosts,
}
