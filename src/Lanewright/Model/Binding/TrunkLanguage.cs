using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan may say of trunks between panels.</summary>
public static class TrunkLanguage
{
    /// <summary>Trunks alike.</summary>
    public static MapShape Trunk { get; } = new("trunks alike",
    [
        new("from", Shapes.Text, "the panel at one end") { IsRequired = true },
        new("to", Shapes.Text, "the panel at the other") { IsRequired = true },
        new("cable", Shapes.Text, "an array cable, by its name in the catalogue") { IsRequired = true },
        new("count", Shapes.Whole(1, 1000), "how many lie side by side") { Otherwise = "1" },
        new("cassette", Shapes.Text, "the cassette at the ends, by its name in the catalogue") { Otherwise = "arrays open at the panels" },
        new("cassette-at", Shapes.OneOf("both", "from", "to"), "the ends that have it: at one end only it takes a split cage apart")
        {
            Otherwise = "both",
        },
        new("method", Shapes.OneOf("A", "B", "C", "U1", "U2"), "polarity method of duplex ports")
        {
            Otherwise = "A for angled arrays, B for flat ones",
        },
        new("type", Shapes.OneOf("A", "B", "C"), "type of an array cable that is open at a panel") { Otherwise = "B" },
        new("length", Shapes.Length, "length of each") { Otherwise = "from the geometry" },
        new("splices", Shapes.Whole(0, 100), "splices in each fibre") { Otherwise = "those of the route, or 0" },
        new("connections", Shapes.Whole(0, 50), "mated pairs in each fibre between those at its ends")
        {
            Otherwise = "what the route states beyond those at its ends, or 0",
        },
        new("measured-loss", Shapes.Loss, "measured loss from panel to panel, both connections included") { Otherwise = "computed" },
        new("growth", WantedLanguage.Growth, "what is laid beyond what is in use") { Otherwise = "50 %" },
        new("side", Shapes.Text, "the side of pathways it lies in, such as A or B") { Otherwise = "that of the sets led through it" },
        new("existing", Shapes.Switch, "whether it lies there already and is not bought") { Otherwise = "no" },
    ]);
}
