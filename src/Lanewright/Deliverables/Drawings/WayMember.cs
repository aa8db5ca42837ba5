using Lanewright.Engineering.Choice;

namespace Lanewright.Deliverables.Drawings;

/// <summary>A class and the share of it that is made in one way.</summary>
/// <param name="Name">Its identifier.</param>
/// <param name="Choice">The class and what was found for it.</param>
/// <param name="Share">Which share.</param>
/// <param name="FirstLink">The first link of it, to name as an example.</param>
/// <param name="Used">Ports of the split cage that lead anywhere, in the cage where most do; 1 where none is split.</param>
public sealed record WayMember(string Name, ClassChoice Choice, int Share, int FirstLink, int Used)
{
    /// <summary>How it is made.</summary>
    public Solution Solution => Choice.Shares[Share].Solution;

    /// <summary>How many links.</summary>
    public int Links => Choice.Shares[Share].Links;
}
