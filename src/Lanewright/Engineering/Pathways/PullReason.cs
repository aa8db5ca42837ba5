namespace Lanewright.Engineering.Pathways;

/// <summary>Why a bundle is pulled when it is.</summary>
public enum PullReason
{
    /// <summary>It goes farther than all that follow and so lies lowest.</summary>
    Longest,

    /// <summary>It goes as far as the one before, and is thicker or has more cables than those that follow.</summary>
    Thickest,

    /// <summary>It is one more of the bundle before.</summary>
    SameRoute,

    /// <summary>It goes less far than the one before and lies above it.</summary>
    Shorter,

    /// <summary>No pathway leads it, so that nothing lies above or below it.</summary>
    Open,
}
