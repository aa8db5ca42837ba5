using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Links;

/// <summary>Reflections: the tables of the clauses, and the bound on interference.</summary>
public sealed class ReflectionTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: IEEE 802.3 400G study-group reflector message on multipath interference, four connectors, extinction ratio 6 dB (seen):
    // all six reflectors -26 dB: upper bound 6.2 dB, statistical 3.81 dB; connectors -25 and modules -35 dB: 2.5 and 1.78 dB.
    // The bound here lies between the statistical figure (less 0.25 dB) and the upper bound of that message.
    [Theory]
    [InlineData(-26, -26, 3.81, 6.2)]
    [InlineData(-25, -35, 1.78, 2.5)]
    public void Interference_LiesBetweenThePublishedFigures(double connector, double module, double statistical, double upper)
    {
        var penalty = Reflections.InterferencePenalty(
            4, Decibels.From(connector), Decibels.From(module), Decibels.From(6), Modulation.Pam4);
        Assert.InRange(penalty!.Value.Value, statistical - 0.25, upper);
    }

    // Source: IEEE 802.3 clauses 121/124 (table D), 122/139/140/151 (tables F and L), number of discrete reflectances against the
    // largest each may have (memory). Between rows the next higher count holds; more than ten are outside the standard.
    [Theory]
    [InlineData("table-D", 1, -37)]
    [InlineData("table-D", 3, -45)]
    [InlineData("table-D", 10, -49)]
    [InlineData("table-F", 2, -31)]
    [InlineData("table-F", 5, -38)]
    [InlineData("table-L", 4, -33)]
    [InlineData("table-L", 7, -37)]
    public void Table_GivesTheLimitOfTheNextHigherCount(string table, int count, double limit) =>
        Assert.Equal(limit, Limits.Reflectance(table)!.LimitFor(count)!.Value.Value.Value);

    [Fact]
    public void Table_EndsAtTen() => Assert.Null(Limits.Reflectance("table-D")!.LimitFor(11));

    [Theory]
    [InlineData("400GBASE-DR4", 4, -45, Verdict.Pass)]
    [InlineData("400GBASE-DR4", 4, -44, Verdict.Fail)]
    [InlineData("400GBASE-DR4", 11, -50, Verdict.Fail)]
    [InlineData("400GBASE-DR4", 11, -55, Verdict.Pass)]
    [InlineData("400GBASE-FR4", 4, -35, Verdict.Pass)]
    [InlineData("400GBASE-FR4", 4, -34, Verdict.Fail)]
    [InlineData("100GBASE-LR1", 2, -29, Verdict.Pass)]
    [InlineData("100GBASE-LR4", 8, -26, Verdict.Pass)]
    [InlineData("100GBASE-LR4", 1, -25, Verdict.Fail)]
    [InlineData("100GBASE-DR", 4, -45, Verdict.Pass)]
    [InlineData("100GBASE-DR", 1, -40, Verdict.Pass)] // table D allows one of -37 dB, and is safe here
    [InlineData("100GBASE-DR", 4, -40, Verdict.Unproven)] // cells not known, so neither passed nor failed
    [InlineData("100G-PSM4", 2, -26, Verdict.Pass)] // NRZ over single mode: every reflection at or below -26 dB (memory)
    [InlineData("100G-PSM4", 2, -25, Verdict.Fail)]
    [InlineData("100G-4WDM-40", 2, -26, Verdict.Pass)]
    [InlineData("50GBASE-ER", 2, -60, Verdict.Unproven)] // no rule is known for the type
    public void Connections_AreHeldAgainstTheRuleOfTheType(string type, int connections, double reflectance, Verdict expected)
    {
        var none = new Known<Decibels>(default, Lanewright.Text.Citation.OfPlan);
        var channel = new Channel
        {
            Fibre = Limits.Fibre("OS2")!,
            Length = Length.FromMetres(100),
            Connections = connections,
            ConnectionLoss = none,
            SpliceLoss = none,
            Reflectance = new Known<Decibels>(Decibels.From(reflectance), Lanewright.Text.Citation.OfPlan),
        };
        var checks = FibreLinkChecks.Of(Limits, channel, Limits.Interface(type)!, Limits.Interface(type)!);
        var check = checks.Single(c => c.Name == CheckNames.Reflectance);
        Assert.Equal(expected, check.Verdict);
    }

    [Theory]
    [InlineData(1, -37, 37)]
    [InlineData(4, -45, 38.9794)]
    [InlineData(10, -49, 39)]
    public void ReturnLoss_AddsReflectedPowers(int count, double each, double expected) =>
        Assert.Equal(expected, Reflections.ReturnLoss(count, Decibels.From(each)).Value, 0.0001);
}
