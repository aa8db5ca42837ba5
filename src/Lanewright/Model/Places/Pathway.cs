using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Places;

/// <summary>A straight tray, riser or duct in a hall, or a route between halls that has a cross-section. Pathways that cross or touch are
/// joined there.</summary>
/// <param name="Hall">The hall; of a route the one it begins in.</param>
/// <param name="Name">Its name in the hall.</param>
/// <param name="FromX">Where it begins, along the rows.</param>
/// <param name="FromY">Where it begins, across the rows.</param>
/// <param name="ToX">Where it ends, along the rows.</param>
/// <param name="ToY">Where it ends, across the rows.</param>
/// <param name="Width">Inside width; of a duct its inside diameter.</param>
/// <param name="Depth">Inside depth; of a duct its inside diameter.</param>
/// <param name="IsDuct">Whether it is round and closed.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record Pathway(
    Hall Hall, string Name, Length FromX, Length FromY, Length ToX, Length ToY, Length Width, Length Depth, bool IsDuct, SourceSpan Span)
{
    /// <summary>Height above the floor where it begins.</summary>
    public Length FromHeight { get; init; } = Hall.PathwayHeight;

    /// <summary>Height above the floor where it ends.</summary>
    public Length ToHeight { get; init; } = Hall.PathwayHeight;

    /// <summary>The side of a pair of ways it belongs to; empty when to none. Pathways of two sides are never joined.</summary>
    public string Side { get; init; } = "";

    /// <summary>Kilograms a metre that it bears between its supports; null when not said.</summary>
    public double? LoadRating { get; init; }

    /// <summary>Smallest radius that cables are led round at its ends, corners and drops; null when not said.</summary>
    public Length? BendRadius { get; init; }

    /// <summary>Places along a duct where cables are pulled on from.</summary>
    public int PullPoints { get; init; }

    /// <summary>The route between halls that it is; null for a pathway inside a hall.</summary>
    public HallRoute? Route { get; init; }

    /// <summary>Whether it runs straight up.</summary>
    public bool IsRiser => Route is null && FromX == ToX && FromY == ToY;

    /// <summary>How long it is.</summary>
    public Length Length
    {
        get
        {
            if (Route is { } route) return route.Length;
            var (x, y, z) = ((ToX - FromX).Metres, (ToY - FromY).Metres, (ToHeight - FromHeight).Metres);
            return Length.FromMetres(Math.Sqrt((x * x) + (y * y) + (z * z)));
        }
    }

    /// <summary>What plans call its kind.</summary>
    public string Kind => IsDuct ? "duct" : IsRiser ? "riser" : "tray";

    /// <summary>Hall and name, such as <c>compute/over-A</c>; of a route its name alone.</summary>
    public string FullName => Route is null ? $"{Hall.PlainName}/{Name}" : Name;
}
