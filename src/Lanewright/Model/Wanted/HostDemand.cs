using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Model.Wanted;

/// <summary>Hosts alike that a fabric has to serve.</summary>
public sealed record HostDemand
{
    /// <summary>Their name in the plan.</summary>
    public required string Name { get; init; }

    /// <summary>How many there are at the start, from 1.</summary>
    public required int Count { get; init; }

    /// <summary>Ports of each, from 1.</summary>
    public int Ports { get; init; } = 1;

    /// <summary>Rate of each port.</summary>
    public required BitRate Rate { get; init; }

    /// <summary>How many stand in one rack, from 1.</summary>
    public int PerRack { get; init; } = 1;

    /// <summary>What each is; null when the smallest host of the catalogue that takes the cards will do.</summary>
    public DeviceModel? Model { get; init; }

    /// <summary>The cards in each; empty when the cheapest of the catalogue with the ports will do.</summary>
    public ImmutableArray<CardModel> Cards { get; init; } = [];

    /// <summary>Why it cannot be led to several at once, in words.</summary>
    /// <param name="over">Over what its ports do not spread.</param>
    public string NotSpread(string over) => Ports == 1
        ? $"the one port of {Name} does not spread over {over}"
        : $"the {Numerals.Whole(Ports)} ports of {Name} do not spread over {over}";
}
