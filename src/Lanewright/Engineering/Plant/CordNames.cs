using Lanewright.Engineering.Choice;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>What the cords of a patched cable are called: the cable, a letter for the place on the way, and the leg where every port of a
/// split cage has a cord of its own.</summary>
public static class CordNames
{
    /// <summary>The name of one cord.</summary>
    /// <param name="cable">What the cable is called.</param>
    /// <param name="solution">How its links are made.</param>
    /// <param name="joint">Which cord it is, from 0 at the first end of the link.</param>
    /// <param name="leg">Which link of the cable it serves, from 1.</param>
    public static string Of(string cable, Solution solution, int joint, int leg) =>
        cable + (char)('a' + joint)
        + (solution.LinksPerCable > 1 && solution.Patching[joint].Links == 1 ? "/" + Numerals.Whole(leg) : "");
}
