namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Places along the ribbon at which dimension lines begin and end, from the first end to the second.</summary>
internal enum Stop
{
    /// <summary>The port of the first end.</summary>
    NearPort,

    /// <summary>The block in its module.</summary>
    NearBlock,

    /// <summary>Its light or wire.</summary>
    NearMedia,

    /// <summary>Its plug.</summary>
    NearPlug,

    /// <summary>The plug of the second end.</summary>
    FarPlug,

    /// <summary>Its light or wire.</summary>
    FarMedia,

    /// <summary>The block in its module.</summary>
    FarBlock,

    /// <summary>Its port.</summary>
    FarPort,
}
