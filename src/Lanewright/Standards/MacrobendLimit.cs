using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>What turns of a radius may cost in a category of single-mode fibre.</summary>
/// <param name="Category">The category, such as G.657.A1.</param>
/// <param name="Radius">The radius.</param>
/// <param name="Turns">How many full turns.</param>
/// <param name="At1550">Loss of all turns at 1550 nm; null where it is not limited.</param>
/// <param name="At1625">Loss of all turns at 1625 nm.</param>
public sealed record MacrobendLimit(
    string Category, Length Radius, double Turns, Known<Decibels>? At1550, Known<Decibels>? At1625)
{
    /// <summary>Reads a row; null where it says no radius.</summary>
    internal static MacrobendLimit? Read(FactSheet sheet)
    {
        if (sheet.Real("radius") is not { } radius || sheet.Real("turns") is not { } turns) return null;
        return new MacrobendLimit(sheet.Subject.Split(' ')[0], Length.FromMillimetres(radius.Value), turns.Value,
            sheet.Real("loss-1550")?.As(Decibels.From), sheet.Real("loss-1625")?.As(Decibels.From));
    }
}
