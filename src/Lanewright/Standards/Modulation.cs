namespace Lanewright.Standards;

/// <summary>How bits become symbols on a lane.</summary>
public enum Modulation
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Two levels, one bit a symbol.</summary>
    Nrz,

    /// <summary>Four levels, two bits a symbol.</summary>
    Pam4,

    /// <summary>Phase and polarisation, received coherently.</summary>
    Coherent,
}
