namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>What costs level on the way.</summary>
internal enum LadderStepKind
{
    /// <summary>A stretch of fibre or wire, or a measured whole.</summary>
    Stretch,

    /// <summary>A mated pair.</summary>
    MatedPair,

    /// <summary>A splice.</summary>
    Splice,

    /// <summary>An attenuator put in on purpose.</summary>
    Attenuator,

    /// <summary>What is kept back for ageing and repair.</summary>
    Ageing,

    /// <summary>An end of a copper assembly.</summary>
    CopperEnd,
}
