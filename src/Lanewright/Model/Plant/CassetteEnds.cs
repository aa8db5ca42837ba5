namespace Lanewright.Model.Plant;

/// <summary>Which ends of trunks have cassettes.</summary>
public enum CassetteEnds
{
    /// <summary>Neither: arrays are open at both panels.</summary>
    None,

    /// <summary>Both.</summary>
    Both,

    /// <summary>Only the near end.</summary>
    From,

    /// <summary>Only the far end.</summary>
    To,
}
