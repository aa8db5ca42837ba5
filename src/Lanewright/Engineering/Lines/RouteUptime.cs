using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>How much of the time a route works, apart from what another needs as well.</summary>
/// <param name="Name">The route.</param>
/// <param name="Own">Fibre that fails with it alone.</param>
/// <param name="Fibre">Share of time in which that is whole.</param>
/// <param name="Sites">Share of time in which the sites between its ends work that are its alone.</param>
public sealed record RouteUptime(string Name, Length Own, Share Fibre, Share Sites)
{
    /// <summary>Both together.</summary>
    public Share All => Share.From(Fibre.Value * Sites.Value);
}
