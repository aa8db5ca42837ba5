namespace Lanewright.Model.Links;

/// <summary>Which device of one side is linked to which of the other.</summary>
public enum LinkPattern
{
    /// <summary>The first with the first, the second with the second.</summary>
    Paired,

    /// <summary>Each with each; a group with itself becomes a full mesh.</summary>
    EachToEach,

    /// <summary>The links of one side dealt out over the other, one after another.</summary>
    Striped,

    /// <summary>Each with those in its own rack.</summary>
    SameRack,

    /// <summary>Each with those in its own row.</summary>
    SameRow,

    /// <summary>Each device of a run of one side with each device of the run of the other that has the same number.</summary>
    InRuns,
}
