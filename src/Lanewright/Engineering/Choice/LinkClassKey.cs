namespace Lanewright.Engineering.Choice;

/// <summary>What tells links apart for a judgement. Links with equal keys are judged once.</summary>
/// <param name="Kind">The first statement that asks for the same.</param>
/// <param name="From">Kind of first end.</param>
/// <param name="To">Kind of second end.</param>
/// <param name="Place">Grid place of the length; -1 when the statement fixes it.</param>
/// <param name="NeededPlace">Grid place of the way, for a fixed length; -1 when it is not known; <see cref="AsLongAsStated"/> when
/// the way fits the stated length and its grid place does not.</param>
/// <param name="Routes">Number of the routes between halls on the way, -1 inside one hall.</param>
/// <param name="FromRack">Kind of rack at the first end, -1 without one.</param>
/// <param name="ToRack">Kind of rack at the second end.</param>
/// <param name="Shape">How the cages are split.</param>
/// <param name="FarPlace">Grid place of the second cord, where the links go through trunks; -1 otherwise.</param>
/// <param name="Turns">Which trunks of its way a link enters at their far panel, a bit for each.</param>
internal readonly record struct LinkClassKey(
    int Kind, short From, short To, int Place, int NeededPlace, short Routes, short FromRack, short ToRack, FanShape Shape, int FarPlace,
    short Turns)
{
    /// <summary>The way fits the stated length; the length of the grid it would be rounded up to does not.</summary>
    public const int AsLongAsStated = -2;
}
