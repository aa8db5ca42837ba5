using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Places;

/// <summary>A room with racks.</summary>
/// <param name="Index">Its number in the plan.</param>
/// <param name="Site">The site it belongs to.</param>
/// <param name="Name">Its name.</param>
/// <param name="PathwayHeight">Height of the overhead pathway above the floor.</param>
/// <param name="ExitX">Where cables to other halls leave, along the rows.</param>
/// <param name="ExitY">Where cables to other halls leave, across the rows.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record Hall(int Index, string Site, string Name, Length PathwayHeight, Length ExitX, Length ExitY, SourceSpan Span)
{
    /// <summary>Height above the sea; null when not said.</summary>
    public Length? Altitude { get; init; }

    /// <summary>Air at the inlets of equipment; null when not said.</summary>
    public Temperature? Inlet { get; init; }

    /// <summary>Environmental class that the equipment has to be held to; empty when not said.</summary>
    public string AirClass { get; init; } = "";

    /// <summary>Heat that is carried away; null when not said.</summary>
    public Watts? Cooling { get; init; }

    /// <summary>Kilopascals the floor bears, evenly; null when not said.</summary>
    public double? FloorLoad { get; init; }

    /// <summary>Height of the ceiling above the floor; null when not said.</summary>
    public Length? Ceiling { get; init; }

    /// <summary>Further exits, by name.</summary>
    public ImmutableArray<HallExit> Exits { get; init; } = [];

    /// <summary>The exit that holds where none is named.</summary>
    public HallExit Exit => new("", ExitX, ExitY);

    /// <summary>Height of the pathway where a plan states none.</summary>
    public static readonly Length UsualPathwayHeight = Length.FromMetres(2.6);

    /// <summary>Whether halls of other sites have the same name.</summary>
    public bool IsNameShared { get; init; }

    /// <summary>Its name, with its site where others are called alike.</summary>
    public string PlainName => IsNameShared ? FullName : Name;

    /// <summary>Site and hall, as plans may write it.</summary>
    public string FullName => Site + "/" + Name;
}
