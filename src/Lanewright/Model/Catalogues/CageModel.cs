using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>What a platform says of one kind of cage. Port modes are a list the platform gives, never computed.</summary>
public sealed record CageModel
{
    /// <summary>The module it is made for.</summary>
    public required FormFactor FormFactor { get; init; }

    /// <summary>Electrical lanes wired to it.</summary>
    public required int Lanes { get; init; }

    /// <summary>Lane signals its silicon can run, by their catalogue names.</summary>
    public required ImmutableArray<string> LaneRates { get; init; }

    /// <summary>The same signals.</summary>
    public required ImmutableArray<LaneSignal> Signals { get; init; }

    /// <summary>Port modes the platform lists.</summary>
    public required ImmutableArray<PortMode> Modes { get; init; }

    /// <summary>Modes that cost the next cage, and that only odd cages can take.</summary>
    public ImmutableArray<PortMode> NeighbourLost { get; init; } = [];

    /// <summary>The most one module may draw; null when the platform does not say.</summary>
    public Watts? PowerLimit { get; init; }

    /// <summary>Every so many cages the limit is raised; 0 when it never is.</summary>
    public int RaisedEvery { get; init; }

    /// <summary>The raised limit.</summary>
    public Watts? RaisedLimit { get; init; }

    /// <summary>Error-correcting codes the port's silicon has.</summary>
    public ImmutableArray<string> Fec { get; init; } = [];

    /// <summary>Whether auto-negotiation and training run on copper here.</summary>
    public bool HasAutonegotiation { get; init; } = true;

    /// <summary>Whether the platform raises a module out of low power.</summary>
    public bool EnablesHighPower { get; init; } = true;

    /// <summary>Whether the platform knows modules in adapters.</summary>
    public bool TakesAdapters { get; init; }

    /// <summary>Cages that share one rate, in blocks of this many; 1 when each is free.</summary>
    public int RateGroup { get; init; } = 1;

    /// <summary>How well all this is known.</summary>
    public Mark Mark { get; init; }

    /// <summary>The power limit of a cage by its number in its bank, counted from 1.</summary>
    public Watts? LimitOf(int numberInBank) => IsRaised(numberInBank) ? RaisedLimit : PowerLimit;

    /// <summary>The most any cage of the kind gives a module; null when the platform does not say.</summary>
    public Watts? HighestLimit => RaisedEvery > 0 && RaisedLimit > PowerLimit ? RaisedLimit : PowerLimit;

    /// <summary>Whether a cage is one of those with the raised limit.</summary>
    public bool IsRaised(int numberInBank) => RaisedEvery > 0 && numberInBank % RaisedEvery == 0;

    /// <summary>Lane count and fastest lane, such as <c>8x50G</c>.</summary>
    public string LanesText => Numerals.Whole(Lanes) + "x" + (LaneRates.IsEmpty ? "?" : LaneRates[^1]);
}
