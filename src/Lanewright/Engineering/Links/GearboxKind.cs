namespace Lanewright.Engineering.Links;

/// <summary>What a module does to its lanes between host and media.</summary>
public enum GearboxKind
{
    /// <summary>As many lanes of the same kind on both sides: they are retimed or only driven.</summary>
    Straight,

    /// <summary>More and slower lanes of the host become fewer and faster ones of the media; the code passes through.</summary>
    Forward,

    /// <summary>The host's code ends in the module, which makes that of the media itself.</summary>
    CodeMaking,

    /// <summary>No module does that.</summary>
    None,
}
