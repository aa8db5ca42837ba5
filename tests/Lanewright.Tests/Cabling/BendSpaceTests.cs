using Lanewright.Engineering.Cabling;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Cabling;

/// <summary>Bends and rack units against published figures.</summary>
public sealed class BendSpaceTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: EIA-310 rack unit (seen): 48 of them are 2133.6 mm.
    [Fact]
    public void RackUnits_AddUpAsPublished() => Assert.Equal(2133.6, 48 * Limits.Practice("rack", "unit").Value, 0.001);

    // Source: general rule for installed fibre, ten times the diameter (seen): 6 mm of cord bend over 60 mm, 2 mm over the 25 mm that
    // TIA-568.0-D allows a cord at least (seen); plug and boot of 50 mm come on top.
    [Theory]
    [InlineData(6, 60)]
    [InlineData(2, 25)]
    public void Fibre_BendsOverTenDiameters(double diameter, double radius)
    {
        var rack = new RackType("r", 48, default, default, Length.FromMillimetres(200), default);
        var cord = new CordModel
        {
            Name = "c",
            Title = "c",
            Fibre = "OS2",
            Near = "LC-duplex",
            Far = "LC-duplex",
            Lengths = [],
            Diameter = Length.FromMillimetres(diameter),
        };
        var check = BendSpace.OfCord(Limits, cord, rack, "from");
        Assert.Equal(radius + Limits.Practice("plug", "fibre").Value, check.Limit!.Value, 1e-9);
    }
}
