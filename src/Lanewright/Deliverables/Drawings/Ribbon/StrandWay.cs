namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Which way a path carries.</summary>
internal enum StrandWay
{
    /// <summary>From the first end.</summary>
    Forth,

    /// <summary>To the first end.</summary>
    Back,

    /// <summary>Both at once.</summary>
    Both,
}
