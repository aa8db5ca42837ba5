using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>What a policy may say of the level of spares.</summary>
internal static class SpareLanguage
{
    private const string NeverShort = "F";

    /// <summary>A level.</summary>
    public static MapShape Level { get; } = new("a level of spares",
    [
        new("confidence", Shapes.OpenShare, "the probability wanted, such as 99.9 %") { IsRequired = true },
        new("resupply", Shapes.Repair, "from a failure until its spare is replaced") { IsRequired = true },
        new("convention", Shapes.OneOf("S", NeverShort),
            "S: a spare still lies on the shelf when more arrive; F: no failure waits for a part until then; S is one more")
        {
            Otherwise = "S",
        },
    ]);

    /// <summary>The level a section states; a confidence of 0 or 100 % is none that spares can give.</summary>
    public static SpareLevel? Bind(MapNode? map)
    {
        if (map?.Share("confidence") is not { Value: > 0 and < 1 } confidence) return null;
        if (map.InUnits("resupply", UnitText.Repairs) is not { } hours) return null;
        return new SpareLevel(confidence, Duration.FromHours(hours),
            map.Text("convention") == NeverShort ? SpareCount.NeverShort : SpareCount.OneOnShelf);
    }
}
