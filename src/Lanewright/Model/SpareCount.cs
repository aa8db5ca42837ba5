namespace Lanewright.Model;

/// <summary>The two conventions in print for a level of spares; they differ by one part.</summary>
public enum SpareCount
{
    /// <summary>S: a spare still lies on the shelf when more arrive.</summary>
    OneOnShelf,

    /// <summary>F: no failure waits for a part until more arrive.</summary>
    NeverShort,
}
