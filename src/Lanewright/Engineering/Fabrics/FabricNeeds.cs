using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What one design asks for, to be held against every wish by itself.</summary>
public sealed record FabricNeeds
{
    /// <summary>What it looks like.</summary>
    public required FabricShape Shape { get; init; }

    /// <summary>Tiers of switches.</summary>
    public required int Tiers { get; init; }

    /// <summary>Fabrics side by side.</summary>
    public required int Planes { get; init; }

    /// <summary>Whether every port of a host reaches every port of any other through switches; otherwise what one rail or plane sends to
    /// another has to cross a host.</summary>
    public bool PortsMeet { get; init; } = true;

    /// <summary>Hosts it was made for at the start, of all kinds.</summary>
    public required int Hosts { get; init; }

    /// <summary>Oversubscription it keeps at each tier from the hosts up with nothing out, the worst of all kinds of hosts; empty for one
    /// tier.</summary>
    public required ImmutableArray<Ratio> Oversubscription { get; init; }

    /// <summary>The same with as many switches of the tier above out as it is asked to survive.</summary>
    public required ImmutableArray<Ratio> OversubscriptionLeft { get; init; }

    /// <summary>Switches of the tier above that may be out while the wanted ratios hold; for one tier, switches that may be out while
    /// every host keeps a port.</summary>
    public required int Survives { get; init; }

    /// <summary>Form factors of the cages in use, in natural order.</summary>
    public required ImmutableArray<string> FormFactors { get; init; }

    /// <summary>Rates of links between switches, lowest first.</summary>
    public required ImmutableArray<BitRate> UplinkRates { get; init; }

    /// <summary>Rack units of all switches after the last year.</summary>
    public required int RackUnits { get; init; }

    /// <summary>Racks that the hosts fill after the last year.</summary>
    public int HostRacks { get; init; }

    /// <summary>Whether it stands in the racks named, within what they take.</summary>
    public bool IsInNamedRacks { get; init; }

    /// <summary>The most that switches with their modules draw in one rack.</summary>
    public required Watts RackPower { get; init; }

    /// <summary>The most that switches weigh in one rack.</summary>
    public required Mass RackWeight { get; init; }

    /// <summary>Price of what is bought at the start.</summary>
    public required Money Price { get; init; }

    /// <summary>Price over the years: all purchases and energy.</summary>
    public required Money PriceOverYears { get; init; }

    /// <summary>Whether racks, boxes and modules can take it at all, whatever is wished.</summary>
    public required bool Fits { get; init; }

    /// <summary>The design in a few words: its models and counts.</summary>
    public required string Name { get; init; }
}
