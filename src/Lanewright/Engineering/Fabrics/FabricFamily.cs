using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Designs of one shape out of the same models, however many of each they take.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Name">The shape and the models, from the hosts up.</param>
internal sealed record FabricFamily(FabricShape Shape, string Name)
{
    /// <summary>Whether a design belongs to it.</summary>
    public bool Holds(FabricDesign design)
    {
        if (design.Shape != Shape) return false;
        var builds = design.Leaves.Select(l => l.Build);
        if (design.Upper is { } upper) builds = builds.Append(upper.Build);
        if (design.Core is { } core) builds = builds.Append(core.Build);
        return NameOf(Shape, builds.Select(b => NameOf(b.Model.Name, b.Cards.Select(c => c.Name)))) == Name;
    }

    /// <summary>What a family is called.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="switches">Its switches, from the hosts up.</param>
    public static string NameOf(FabricShape shape, IEnumerable<string> switches) =>
        $"{FabricShapes.Word(shape)}, {string.Join(" under ", switches.Distinct())}";

    /// <summary>A switch by its model and its kinds of card.</summary>
    public static string NameOf(string model, IEnumerable<string> cards) =>
        model + string.Concat(cards.Distinct().Select(c => " with " + c));
}
