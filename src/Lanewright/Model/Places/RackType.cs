using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Model.Places;

/// <summary>A kind of rack.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Units">Rack units, counted from the bottom.</param>
/// <param name="Width">Outside width, and so the pitch of a row.</param>
/// <param name="Depth">Outside depth.</param>
/// <param name="FrontSpace">From the port face to the closed front door: where plugs stick out and cables bend.</param>
/// <param name="Plinth">Height of the lowest rack unit above the floor.</param>
public sealed record RackType(string Name, int Units, Length Width, Length Depth, Length FrontSpace, Length Plinth)
{
    /// <summary>The most that may stand in it, its own weight not counted; null when not said.</summary>
    public Mass? WeightLimit { get; init; }

    /// <summary>Its own weight with doors and strips; null when not said.</summary>
    public Mass? OwnWeight { get; init; }

    /// <summary>The most power that may be drawn and cooled in it; null when not said.</summary>
    public Watts? PowerLimit { get; init; }

    /// <summary>From the front posts to the closed rear door.</summary>
    public Length DeviceDepth { get; init; } = Depth - FrontSpace;

    /// <summary>The name of the rack that holds when a plan describes none.</summary>
    public const string DefaultName = "standard";

    /// <summary>The rack that holds when a plan describes none.</summary>
    public static RackType Standard(StandardsLibrary standards) => new(
        DefaultName,
        48,
        Length.FromMillimetres(600),
        Length.FromMillimetres(1200),
        Length.FromMillimetres(150),
        Length.FromMillimetres(standards.Practice("rack", "plinth").Value));
}
