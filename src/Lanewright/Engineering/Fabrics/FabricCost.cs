using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What an option costs, by what the money is spent on.</summary>
/// <param name="Switches">Switches, chassis and cards.</param>
/// <param name="Modules">Modules.</param>
/// <param name="Cables">Assemblies and cords.</param>
/// <param name="SmallParts">Attenuators and adapters.</param>
/// <param name="Energy">Energy.</param>
public sealed record FabricCost(Money Switches, Money Modules, Money Cables, Money SmallParts, Money Energy)
{
    /// <summary>All together.</summary>
    public Money Total => Switches + Modules + Cables + SmallParts + Energy;
}
