using System.Text;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Labels;

/// <summary>Codes of places in the manner of TIA-606: space, a stop, cabinet. Only letters and digits of names are kept, so that a label
/// can be read out and typed.</summary>
public static class PlaceCode
{
    /// <summary>The code of a rack.</summary>
    public static string Of(Rack rack) => $"{Word(rack.Hall.Name)}.{Word(rack.Row)}{Numerals.Padded(rack.Number, 2)}";

    /// <summary>The code of a tray or duct: its space and its name.</summary>
    public static string Of(Pathway pathway) => $"{Word(pathway.Hall.Name)}.{Word(pathway.Name)}";

    private static string Word(string name)
    {
        var word = new StringBuilder(name.Length);
        foreach (var c in name)
            if (char.IsAsciiLetterOrDigit(c)) word.Append(char.ToUpperInvariant(c));
        return word.Length == 0 ? "X" : word.ToString();
    }
}
