namespace Lanewright.Engineering.Pathways;

/// <summary>What a thing that is laid is to its link.</summary>
public enum CableKind
{
    /// <summary>The cable from end to end, or the cord at the first end of trunks.</summary>
    Cable,

    /// <summary>The cord at the second end of trunks.</summary>
    FarCord,

    /// <summary>A trunk.</summary>
    Trunk,
}
