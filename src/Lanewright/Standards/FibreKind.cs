namespace Lanewright.Standards;

/// <summary>The two families of glass.</summary>
public enum FibreKind
{
    /// <summary>Single mode.</summary>
    SingleMode,

    /// <summary>50/125 micrometre multimode.</summary>
    MultiMode,
}
