using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings;

/// <summary>The colour of a fibre by its number in the cable, as TIA-598 counts them.</summary>
/// <param name="Name">The colour in words.</param>
/// <param name="Fill">The colour as drawings take it.</param>
/// <param name="IsDark">Whether text on it has to be light.</param>
/// <param name="HasStripe">Whether a stripe tells it from the fibre of the same colour among the first twelve.</param>
public sealed record FibreColour(string Name, string Fill, bool IsDark, bool HasStripe = false)
{
    private static readonly ImmutableArray<FibreColour> Twelve =
    [
        new("blue", "#2360b8", true), new("orange", "#ee8a2c", false), new("green", "#2c8a43", true), new("brown", "#78492a", true),
        new("slate", "#77848e", true), new("white", "#ffffff", false), new("red", "#c5282f", true), new("black", "#151515", true),
        new("yellow", "#f4d327", false), new("violet", "#7a3f9d", true), new("rose", "#f2a7bf", false), new("aqua", "#74d0dd", false),
    ];

    /// <summary>The colour of a fibre, counted from 1; above twelve the order repeats with a stripe.</summary>
    public static FibreColour Of(int fibre)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fibre, 1);
        var colour = Twelve[(fibre - 1) % Twelve.Length];
        return fibre <= Twelve.Length ? colour : colour with { HasStripe = true };
    }

    /// <summary>The colours of a fibre that lies in tubes of twelve: that of the tube, and its own in it.</summary>
    /// <param name="fibre">Its number in the cable, from 1.</param>
    public static (FibreColour Tube, FibreColour Fibre) InTubes(int fibre)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fibre, 1);
        return (Of(((fibre - 1) / Twelve.Length) + 1), Twelve[(fibre - 1) % Twelve.Length]);
    }

    /// <summary>A fibre of a cable in words: in a cable of more than twelve its tube comes first.</summary>
    /// <param name="fibre">Its number in the cable, from 1.</param>
    /// <param name="fibres">Fibres of the cable.</param>
    public static string Words(int fibre, int fibres)
    {
        if (fibres <= Twelve.Length) return Of(fibre).Name;
        var (tube, own) = InTubes(fibre);
        return $"{tube.Label}/{own.Name}";
    }

    /// <summary>How its stripe is drawn; empty where it has none.</summary>
    public string StripeStyle => !HasStripe ? "" : Name == "black" ? "stripe2" : "stripe";

    /// <summary>The name, with a star where there is a stripe.</summary>
    public string Label => HasStripe ? Name + "*" : Name;
}
