namespace Lanewright.Model.Places;

/// <summary>One of the two long sides of a row.</summary>
public enum RowSide
{
    /// <summary>The side of the smaller distance across the hall.</summary>
    Near,

    /// <summary>The other.</summary>
    Far,
}
