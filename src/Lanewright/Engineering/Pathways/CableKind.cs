namespace Lanewright.Engineering.Pathways;

/// <summary>What a thing that is laid is to its link.</summary>
public enum CableKind
{
    /// <summary>The cable from end to end, or a cord on a way through trunks.</summary>
    Cable,

    /// <summary>A trunk.</summary>
    Trunk,

    /// <summary>A cord of a line between sites, inside a building.</summary>
    LineCord,
}
