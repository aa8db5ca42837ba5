using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The cheapest option of a question, told apart by its shape and its models and not by how many of them there are.</summary>
/// <param name="Shape">Its shape; null where nothing fits.</param>
/// <param name="Name">What its switches are; empty where nothing fits.</param>
/// <param name="Option">The option; null where nothing fits.</param>
internal sealed record Winner(FabricShape? Shape, string Name, FabricOption? Option)
{
    /// <summary>How much less some option of any shape could cost at most, as a part of its price.</summary>
    public double Gap { get; private init; }

    /// <summary>Whether nothing fits, and no search was broken off that might have found something.</summary>
    public bool IsNothing { get; private init; }

    /// <summary>Its price over the years.</summary>
    public Money Cost => Option?.PriceOverYears ?? Money.Zero;

    /// <summary>The family it belongs to.</summary>
    public FabricFamily Family => new(Shape ?? default, Name);

    /// <summary>The best of an answer.</summary>
    public static Winner Of(SizingAnswer answer) => answer.Options is [var best, ..]
        ? new Winner(best.Shape, NameOf(best), best) { Gap = GapOf(answer, best) }
        : new Winner(null, "", null) { IsNothing = answer.LowerBound is null };

    /// <summary>What an option is called where only its shape and its models count.</summary>
    public static string NameOf(FabricOption option) =>
        FabricFamily.NameOf(option.Shape, option.Switches.Select(s => FabricFamily.NameOf(s.Model.Name, s.Cards.Select(c => c.Name))));

    private static double GapOf(SizingAnswer answer, FabricOption best) =>
        answer.LowerBound is { } bound && best.PriceOverYears > Money.Zero
        ? Math.Max(0, (double)((best.PriceOverYears - bound).Hundredths / best.PriceOverYears.Hundredths))
        : 0;

    /// <summary>Whether two are the same option, however many switches each takes.</summary>
    public bool IsLike(Winner other) => Shape == other.Shape && Name == other.Name;
}
