namespace Lanewright.Engineering.Links;

/// <summary>What a comparison of a value with its limit comes to, best first.</summary>
public enum Verdict
{
    /// <summary>Inside the limit.</summary>
    Pass,

    /// <summary>A value or a limit that is needed is not known.</summary>
    Unproven,

    /// <summary>Outside the limit.</summary>
    Fail,
}
