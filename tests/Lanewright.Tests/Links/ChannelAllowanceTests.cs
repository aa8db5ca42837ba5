using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Links;

/// <summary>The loss of the longest fibre of a type with all its connections is the loss its standard allows. Published totals are rounded
/// to 0.1 dB, which the tolerances are for.</summary>
public sealed class ChannelAllowanceTests
{
    private const double Rounded = 0.055;

    /// <summary>A public table of IEEE multimode channel and connection allowances for OM4 and a fibre consortium's application pages
    /// (totals seen); splits between fibre and connections partly `memory`. Rows LB-16 to LB-21 of the cabling cases.</summary>
    [Theory]
    [InlineData("10GBASE-SR", "OM4", 0.4, 1.5, 2.9, Rounded)]
    [InlineData("25GBASE-SR", "OM4", 0.1, 1.5, 1.9, Rounded)]
    [InlineData("40GBASE-SR4", "OM4", 0.15, 1.0, 1.5, Rounded)]
    [InlineData("400GBASE-SR8", "OM4", 0.1, 1.5, 1.9, Rounded)]
    [InlineData("400GBASE-SR4.2", "OM4", 0.1, 1.5, 1.8, Rounded)]
    [InlineData("400GBASE-SR4.2", "OM5", 0.15, 1.5, 2.0, Rounded)]
    [InlineData("40GBASE-SR4", "OM3", 0.1, 1.5, 1.9, Rounded)]
    public void LongestFibre_WithItsConnections_IsTheAllowance(
        string type, string fibre, double kilometres, double connections, double expected, double tolerance)
    {
        var library = StandardsLibrary.Shipped;
        var found = library.Interface(type);
        var glass = library.Fibre(fibre);
        Assert.NotNull(found);
        Assert.NotNull(glass);
        var channel = new Channel
        {
            Fibre = glass,
            Length = Length.FromMetres(kilometres * 1000),
            Connections = 1,
            ConnectionLoss = new Known<Decibels>(Decibels.From(connections), Citation.OfPlan),
            SpliceLoss = new Known<Decibels>(default, Citation.OfPlan),
        };
        var loss = ChannelLoss.Of(channel, found);
        Assert.NotNull(loss);
        Assert.Equal(expected, loss.Maximum.Value, tolerance);
    }
}
