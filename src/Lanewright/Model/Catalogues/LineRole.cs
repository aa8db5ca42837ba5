namespace Lanewright.Model.Catalogues;

/// <summary>What a part does on a line between sites.</summary>
public enum LineRole
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Puts wavelengths together, or takes them apart.</summary>
    Multiplexer,

    /// <summary>Takes light away, as much as it is set to.</summary>
    Pad,

    /// <summary>Amplifies all wavelengths together.</summary>
    Amplifier,
}
