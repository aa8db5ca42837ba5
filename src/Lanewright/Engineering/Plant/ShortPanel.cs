using System.Collections.Immutable;

namespace Lanewright.Engineering.Plant;

/// <summary>A panel without places for even the fewest trunks that would do.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Name">Its name.</param>
/// <param name="Places">Places it has.</param>
/// <param name="Ends">Ends of the fewest trunks, those that lie there already included.</param>
/// <param name="Groups">The groups that end there and are to be bought.</param>
public sealed record ShortPanel(int Panel, string Name, int Places, int Ends, ImmutableArray<string> Groups);
