using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan may say of power feeds.</summary>
internal static class PowerLanguage
{
    /// <summary>Outlets between two phases.</summary>
    public const string PhaseToPhase = "phase-to-phase";

    /// <summary>A feed.</summary>
    public static MapShape Feed { get; } = new("a power feed",
    [
        new("racks", new ListShape(PlaceShapes.Racks), "racks it feeds, with a strip and a breaker in each") { IsRequired = true },
        new("volts", Shapes.Voltage, "voltage between phases; of a single phase, between its conductors") { IsRequired = true },
        new("breaker", Shapes.Current, "rating of the breaker of each strip") { IsRequired = true },
        new("phases", Shapes.OneOf("1", "3"), "how many phases") { Otherwise = "1" },
        new("outlets", Shapes.OneOf("phase-to-neutral", PhaseToPhase), "what the outlets of three phases lie between")
        {
            Otherwise = "phase-to-neutral",
        },
        new("full-rated", Shapes.Switch, "whether it is listed for continuous load at its full rating") { Otherwise = "no" },
    ]);
}
