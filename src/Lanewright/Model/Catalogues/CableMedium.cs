namespace Lanewright.Model.Catalogues;

/// <summary>What carries a link.</summary>
public enum CableMedium
{
    /// <summary>Passive copper assembly.</summary>
    Dac,

    /// <summary>Active copper assembly with retimers.</summary>
    Aec,

    /// <summary>Active optical assembly.</summary>
    Aoc,

    /// <summary>Modules and fibre.</summary>
    Fibre,

    /// <summary>Twisted pair.</summary>
    TwistedPair,
}
