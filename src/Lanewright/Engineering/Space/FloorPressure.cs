using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Space;

/// <summary>What a rack weighs on the floor below it.</summary>
public static class FloorPressure
{
    private const double PascalsInKilopascal = 1000;

    /// <summary>Kilopascals, spread evenly over the footprint of a rack.</summary>
    public static double Of(RackContents contents, StandardsLibrary standards) => Of(contents.Rack, contents.OnFloor, standards);

    /// <summary>The most that may stand on the footprint of a rack under so many kilopascals.</summary>
    public static Mass Bears(Rack rack, double pressure, StandardsLibrary standards) =>
        Mass.FromKilograms(pressure * PascalsInKilopascal * rack.Type.Width.Metres * rack.Type.Depth.Metres
            / standards.Facility("gravity", "standard").Value);

    /// <summary>The same for a mass that stands on the footprint of a rack.</summary>
    public static double Of(Rack rack, Mass onFloor, StandardsLibrary standards)
    {
        var area = rack.Type.Width.Metres * rack.Type.Depth.Metres;
        return onFloor.Kilograms * standards.Facility("gravity", "standard").Value / area / PascalsInKilopascal;
    }
}
