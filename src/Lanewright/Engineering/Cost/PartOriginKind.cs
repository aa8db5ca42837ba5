namespace Lanewright.Engineering.Cost;

/// <summary>What a part is needed for.</summary>
public enum PartOriginKind
{
    /// <summary>Devices of a group, or cards in them.</summary>
    Group,

    /// <summary>Cages that links use: a module each, however many links share it.</summary>
    Cages,

    /// <summary>Links of a set.</summary>
    Links,

    /// <summary>Trunks between panels.</summary>
    Trunk,

    /// <summary>A line between sites.</summary>
    Line,
}
