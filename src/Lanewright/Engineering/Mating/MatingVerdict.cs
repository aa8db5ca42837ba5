namespace Lanewright.Engineering.Mating;

/// <summary>Whether two ends can be made to work together.</summary>
public enum MatingVerdict
{
    /// <summary>As they are.</summary>
    Works,

    /// <summary>If certain things are seen to.</summary>
    Conditional,

    /// <summary>Not by any setting.</summary>
    Never,
}
