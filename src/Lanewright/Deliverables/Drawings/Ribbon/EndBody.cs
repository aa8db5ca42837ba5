namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>What sits in a cage.</summary>
internal enum EndBody
{
    /// <summary>Nothing: the port has a socket for the cable itself.</summary>
    Socket,

    /// <summary>A module with lasers.</summary>
    Module,

    /// <summary>A module that drives twisted pair.</summary>
    PairModule,

    /// <summary>The end of passive copper.</summary>
    PassiveEnd,

    /// <summary>The end of active copper.</summary>
    ActiveCopperEnd,

    /// <summary>The end of an active optical cable: the light stays inside.</summary>
    ActiveOpticalEnd,
}
