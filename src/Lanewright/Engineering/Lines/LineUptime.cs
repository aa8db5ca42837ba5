using System.Collections.Immutable;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>How much of the time a line carries something, and what that is made of.</summary>
/// <param name="Ends">Share of time in which the sites at both ends work.</param>
/// <param name="Sites">Share of time in which the sites work that both routes pass.</param>
/// <param name="Shared">Fibre that both routes need.</param>
/// <param name="Fibre">Share of time in which that is whole.</param>
/// <param name="Routes">Each route that works, apart from the rest; without any it carries nothing.</param>
public sealed record LineUptime(Share Ends, Share Sites, Length Shared, Share Fibre, ImmutableArray<RouteUptime> Routes)
{
    /// <summary>Share of time in which it carries something: what all routes need, and one of them.</summary>
    public Share All
    {
        get
        {
            var common = Share.From(Ends.Value * Sites.Value * Fibre.Value);
            return Routes switch
            {
                [] => default,
                [var only] => Share.From(common.Value * only.All.Value),
                [var first, var second, ..] => RouteAvailability.Either(first.All, second.All, common),
            };
        }
    }
}
