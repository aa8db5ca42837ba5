using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Devices;

/// <summary>Devices alike.</summary>
public sealed record DeviceGroup
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name in the plan.</summary>
    public required string Name { get; init; }

    /// <summary>What each is.</summary>
    public required DeviceModel Model { get; init; }

    /// <summary>The cards in the slots of each.</summary>
    public ImmutableArray<CardModel> Cards { get; init; } = [];

    /// <summary>The cages of each.</summary>
    public required CageLayout Layout { get; init; }

    /// <summary>Index of the first device.</summary>
    public required int First { get; init; }

    /// <summary>How many there are.</summary>
    public required int Count { get; init; }

    /// <summary>How they are named.</summary>
    public required NamePattern Pattern { get; init; }

    /// <summary>Whether they stand there already and are not bought.</summary>
    public bool IsExisting { get; init; }

    /// <summary>Whether part of it could not be read or found: what hangs on it is not judged.</summary>
    public bool IsFaulty { get; init; }

    /// <summary>Power feeds each of them draws from, in natural order; empty when the plan does not say.</summary>
    public ImmutableArray<string> Feeds { get; init; } = [];

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Price of one with its cards.</summary>
    public Money Price => Cards.Aggregate(Model.Price, (sum, card) => sum + card.Price);
}
