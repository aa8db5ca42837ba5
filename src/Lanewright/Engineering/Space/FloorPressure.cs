using Lanewright.Standards;

namespace Lanewright.Engineering.Space;

/// <summary>What a rack weighs on the floor below it.</summary>
public static class FloorPressure
{
    private const double PascalsInKilopascal = 1000;

    /// <summary>Kilopascals, spread evenly over the footprint of a rack.</summary>
    public static double Of(RackContents contents, StandardsLibrary standards)
    {
        var area = contents.Rack.Type.Width.Metres * contents.Rack.Type.Depth.Metres;
        return contents.OnFloor.Kilograms * standards.Facility("gravity", "standard").Value / area / PascalsInKilopascal;
    }
}
