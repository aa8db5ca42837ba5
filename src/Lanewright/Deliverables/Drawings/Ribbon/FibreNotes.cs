using Lanewright.Engineering.Choice;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>What a reader of a fibre ribbon must know beside the drawing.</summary>
internal static class FibreNotes
{
    private const int ColoursWithoutStripe = 12;

    /// <summary>The notes that apply.</summary>
    public static IEnumerable<string> Of(
        LinkClass link, Solution solution, FibreSide near, PlugLayout nearPlug, PlugLayout farPlug, int ends, int matedPairs)
    {
        if (nearPlug.IsNumbered && farPlug.IsNumbered && ends == 1)
            yield return "The channel crosses as method B of TIA-568 does: what leaves at place 1 of one plug arrives at place "
                + $"{Numerals.Whole(nearPlug.Rows.Length)} of the other.";
        if (ends > 1 && near.Runnings > 1)
            yield return "Port /1 of the split cage leads to B1, /2 to B2 and so on. All far ends are drawn alike"
                + (nearPlug.IsNumbered ? "; fibres keep the colour of their place in the plug of A." : ".");
        if (link.Shape == FanShape.Straight)
            yield return "Both cages are split alike: port /1 of A meets port /1 of B and so on.";
        if (link.Shape == FanShape.BothEnds)
            yield return "Both cages are split and their ports are mixed, so each far cage has other ports that lead elsewhere. The "
                + "double bar is the coupler where two fan-outs meet; the port list says which lanes of its cage a port has.";
        if (near.Type.IsBidirectional)
            yield return "Each fibre carries one wavelength each way. Which of the two leaves on places 1 to 4 is not tabled here; the "
                + "shorter one is drawn there.";
        if (!nearPlug.IsNumbered && !nearPlug.IsPairs)
            yield return $"The places of {(nearPlug.Name.Length > 0 ? nearPlug.Name : "this plug")} are not tabled here; fibres are drawn "
                + "in the order of their lanes and in no colour.";
        if (matedPairs > 0)
            yield return "Mated pairs are drawn evenly along the way; the plan does not say where they lie.";
        if (NotDrawn(solution, matedPairs) is { } left)
            yield return left + " on the way " + (ends > 1 ? "lie in the trunk or in its legs, which the plan does not say, and " : "")
                + "are counted in the loss and not drawn.";
        if (nearPlug.Rows.Any(r => r.IsDark))
            yield return "Dotted places are dark.";
        if (nearPlug.IsNumbered && nearPlug.Rows.Length > ColoursWithoutStripe
            && nearPlug.Rows.Skip(ColoursWithoutStripe).Any(r => !r.IsDark))
            yield return "A star marks a fibre with a stripe: above twelve the colours of TIA-598 repeat.";
        yield return RibbonWords.LaserCaution;
    }

    /// <summary>What the way has that the drawing does not show; null when it shows all.</summary>
    private static string? NotDrawn(Solution solution, int matedPairs)
    {
        var (pairs, splices) = (solution.Channel?.Connections > matedPairs, solution.Channel?.Splices > 0);
        return pairs && splices ? "Mated pairs and splices" : pairs ? "Mated pairs" : splices ? "Splices" : null;
    }
}
