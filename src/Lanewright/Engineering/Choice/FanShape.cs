namespace Lanewright.Engineering.Choice;

/// <summary>How the cages of a link are split, and so what kind of cable joins them.</summary>
public enum FanShape
{
    /// <summary>No cage is split.</summary>
    Single,

    /// <summary>The first end's cage is split and its parts go to cages of their own.</summary>
    FromEnd,

    /// <summary>The second end's cage is split.</summary>
    ToEnd,

    /// <summary>Both cages are split alike and all parts of one go to the other.</summary>
    Straight,

    /// <summary>Both cages are split and their parts are mixed.</summary>
    BothEnds,
}
