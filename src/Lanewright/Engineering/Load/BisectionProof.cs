namespace Lanewright.Engineering.Load;

/// <summary>How a bisection was found.</summary>
public enum BisectionProof
{
    /// <summary>Every division into halves was tried.</summary>
    Enumerated,

    /// <summary>A division was found that carries no more than every division can.</summary>
    BoundsMeet,

    /// <summary>A search that gives up only starts which carry too much already was finished.</summary>
    Searched,

    /// <summary>Only bounds are known.</summary>
    Bounds,
}
