using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A wish with a limit that can be moved.</summary>
/// <param name="Stated">The limit as it is wanted.</param>
/// <param name="Step">Two limits nearer than this are the same.</param>
/// <param name="With">The question with another limit; null for none.</param>
/// <param name="Value">What a design needs of it.</param>
/// <param name="Words">What a design needs of it, in words.</param>
internal sealed record Loosening(
    decimal Stated,
    decimal Step,
    Func<decimal?, WantedFabric> With,
    Func<FabricNeeds, decimal> Value,
    Func<FabricNeeds, string> Words);
