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
    Func<FabricNeeds, string> Words)
{
    /// <summary>What is wanted, as a number in the unit.</summary>
    public decimal Wanted { get; init; } = Stated;

    /// <summary>What a design needs, as a number in the unit; null where that is the value itself.</summary>
    public Func<FabricNeeds, decimal>? Shown { get; init; }

    /// <summary>The question with what a design needs, as it is told; null where that is the question with the value.</summary>
    public Func<FabricNeeds, WantedFabric>? Again { get; init; }

    /// <summary>The unit of both; empty for plain counts and ratios.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The question with what a design needs, as it is told.</summary>
    public WantedFabric Told(FabricNeeds best) => Again?.Invoke(best) ?? With(Value(best));

    /// <summary>The limit in numbers.</summary>
    /// <param name="best">The design that makes it possible; null for none.</param>
    public WishFigures Figures(FabricNeeds? best) => new(Wanted, best is null ? null : (Shown ?? Value)(best), Unit);
}
