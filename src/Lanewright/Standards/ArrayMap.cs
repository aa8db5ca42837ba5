namespace Lanewright.Standards;

/// <summary>How a part of a fibre way leads the positions of one side to those of the other.</summary>
public enum ArrayMap
{
    /// <summary>Position p to position p.</summary>
    Straight,

    /// <summary>Position p to position N+1-p.</summary>
    Reversed,

    /// <summary>Odd positions to the next one, even ones to the one before.</summary>
    PairFlipped,

    /// <summary>Pairs counted from the other end, each with its first fibre first.</summary>
    PairsReversed,

    /// <summary>Pair k to positions k and N+1-k.</summary>
    EndToEnd,
}
