using System.Collections.Immutable;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Links;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Links alike.</summary>
public sealed record LinkClass
{
    /// <summary>Its number.</summary>
    public required int Index { get; init; }

    /// <summary>The statement the links come from; where several ask for the same, the first of them.</summary>
    public required LinkStatement Statement { get; init; }

    /// <summary>All statements with links of the class, in order.</summary>
    public ImmutableArray<LinkStatement> Statements { get; init; } = [];

    /// <summary>The names of those statements; when there are many, the first and how many more.</summary>
    public string SetNames => Statements.Length > 1 ? $"{Statement.Name} and {Statements.Length - 1} more" : Statement.Name;

    /// <summary>Kind of first end.</summary>
    public required EndSpec From { get; init; }

    /// <summary>Kind of second end.</summary>
    public required EndSpec To { get; init; }

    /// <summary>Length the cable must at least have; null when it cannot be told.</summary>
    public required Length? Needed { get; init; }

    /// <summary>Length the way needs, where the statement fixes another; null when not known.</summary>
    public Length? Way { get; init; }

    /// <summary>How the links go through trunks, <see cref="Needed"/> being the length of the first cord; null for one cable from end to
    /// end.</summary>
    public TrunkWay? Through { get; init; }

    /// <summary>Length the second cord must at least have, where the links go through trunks.</summary>
    public Length? FarNeeded { get; init; }

    /// <summary>What the routes between halls on the way are joined by; null inside one hall.</summary>
    public RouteJoins? Joins { get; init; }

    /// <summary>Kind of rack at the first end; null without one.</summary>
    public RackType? FromRack { get; init; }

    /// <summary>Kind of rack at the second end.</summary>
    public RackType? ToRack { get; init; }

    /// <summary>How the cages are split.</summary>
    public FanShape Shape { get; init; }

    /// <summary>How many links there are of it.</summary>
    public int Count { get; init; }

    /// <summary>Its first link, to name as an example.</summary>
    public int FirstLink { get; init; }

    /// <summary>Legs of the cable that joins the ends.</summary>
    public int Legs => Shape switch { FanShape.FromEnd => From.Ways, FanShape.ToEnd => To.Ways, _ => 1 };

    /// <summary>Links one cable carries.</summary>
    public int LinksPerCable => Shape == FanShape.Straight ? From.Ways : Legs;
}
