namespace Lanewright.Model.Catalogues;

/// <summary>A cord that modules plug on to: fibre, or twisted pair.</summary>
public sealed record CordModel : CableItem
{
    /// <summary>The class of fibre, or the category of twisted pair.</summary>
    public required string Fibre { get; init; }

    /// <summary>Connector of the end with all positions.</summary>
    public required string Near { get; init; }

    /// <summary>Connector of each leg.</summary>
    public required string Far { get; init; }

    /// <summary>Polish of the near end; empty where there is none.</summary>
    public string PolishNear { get; init; } = "";

    /// <summary>Polish of each leg's end; empty where there is none.</summary>
    public string PolishFar { get; init; } = "";

    /// <summary>Alignment pins of the near end: <c>pinned</c> or <c>unpinned</c>; empty for what is usual at its connector.</summary>
    public string PinsNear { get; init; } = "";

    /// <summary>Alignment pins of each leg's end.</summary>
    public string PinsFar { get; init; } = "";

    /// <summary>Fibres of an array cable that is not filled: they lie outermost, and the positions in the middle are empty. Null where each
    /// position has one.</summary>
    public int? Fibres { get; init; }

    /// <summary>Whether it only stands for a cord that the catalogue lacks.</summary>
    public bool IsPlaceholder => Near.Length == 0;

    /// <summary>Whether it is twisted pair.</summary>
    public bool IsTwistedPair => Near == "RJ45";
}
