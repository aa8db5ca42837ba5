using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Plant;

/// <summary>Trunks alike between two panels.</summary>
public sealed record TrunkGroup
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The panel its near ends are in.</summary>
    public required int From { get; init; }

    /// <summary>The panel its far ends are in.</summary>
    public required int To { get; init; }

    /// <summary>How many trunks lie side by side.</summary>
    public required int Count { get; init; }

    /// <summary>The cable of each.</summary>
    public required CordModel Cable { get; init; }

    /// <summary>Positions of its arrays.</summary>
    public required int Positions { get; init; }

    /// <summary>The cassette at both ends; null where arrays are open at the panels.</summary>
    public SundryModel? Cassette { get; init; }

    /// <summary>The polarity method it is built by, or the type of its array cables where they are open.</summary>
    public required string Method { get; init; }

    /// <summary>What light passes from the cord at the near end to that at the far end, both included.</summary>
    public required ImmutableArray<ArrayPart> Chain { get; init; }

    /// <summary>Stated length of each; null for the way along the pathways.</summary>
    public Length? Length { get; init; }

    /// <summary>Splices in each fibre.</summary>
    public int Splices { get; init; }

    /// <summary>Measured loss of the permanent link, both its end connections included; null when it is to be computed.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>Whether it lies there already and is not bought.</summary>
    public bool IsExisting { get; init; }

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Ports at the front of one trunk's end: pairs of a cassette, or the array itself.</summary>
    public int PortsEach => Cassette is null ? 1 : Positions / 2;

    /// <summary>Ports of all together.</summary>
    public int Ports => PortsEach * Count;

    /// <summary>Mated pairs from cord to cord: the two at the panels' front, and behind cassettes an array at each end.</summary>
    public int Connections => Cassette is null ? 2 : 4;

    /// <summary>Connector at the panels' front.</summary>
    public string Connector => Cassette is { } cassette ? cassette.Front.Split(' ')[0] : Cable.Near;

    /// <summary>Polish at the panels' front.</summary>
    public string Polish => Cassette is { } cassette ? cassette.Front.Split(' ').ElementAtOrDefault(1) ?? "" : Cable.PolishNear;

    /// <summary>Whether it is known which duplex port is which at both ends, and not only what pairs with what.</summary>
    public bool IsOrderKnown => Chain.All(p => p.IsOrderKnown);

    /// <summary>Whether the arrays are angled.</summary>
    public bool IsAngled => Cable.PolishNear == "APC";
}
