using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Space;

/// <summary>A load over the most that one person may lift in the best of postures. Above one it wants two persons or a lift; reach,
/// height and twist make one too much far earlier.</summary>
public static class LiftingIndex
{
    /// <summary>The index; 1 is the limit of the ideal case.</summary>
    public static Known<double> Of(Mass load, StandardsLibrary standards) =>
        standards.Facility("lift", "one-person").As(limit => load.Kilograms / limit);
}
