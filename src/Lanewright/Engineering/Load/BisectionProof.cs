namespace Lanewright.Engineering.Load;

/// <summary>How a bisection was found.</summary>
public enum BisectionProof
{
    /// <summary>Every division into halves was tried.</summary>
    Enumerated,

    /// <summary>A division was found that carries no more than every division can.</summary>
    BoundsMeet,

    /// <summary>Only bounds are known.</summary>
    Bounds,
}
