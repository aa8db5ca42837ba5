namespace Lanewright.Tests.Binding;

/// <summary>Standards values of the user replace shipped ones only where they mean the same.</summary>
public sealed class StandardsReplacementTests
{
    [Theory]
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-os2,400,m,house rule,common practice")]
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-os2,0.4,km,house rule,common practice", "LW0203")]
    [InlineData("my-interface-types.csv", "400GBASE-XX,reach-os2,0.4,km,house rule,common practice", "LW0203")]
    [InlineData("my-practices.csv", "loss,connection,much,,house rule,common practice", "LW0203")]
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-os2,400,m,,common practice", "LW0201")]
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-os2,400,m,house rule,", "LW0201")]
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-os2,400,m,house rule,sure", "LW0201")]
    [InlineData("limits.csv", "400GBASE-DR4,reach-os2,400,m,house rule,common practice", "LW0108")]
    [InlineData("my-cage-modes.csv", "8x50G/3x100G,signal,50G,,house rule,common practice")]
    public void Row_IsReadOrReported(string file, string row, params string[] codes) =>
        Expect.Codes($"lanewright: 1\nstandards: {file}\n# file: {file}\nsubject,field,value,unit,document,mark\n{row}\n", codes);

    [Fact]
    public void ReplacedReach_IsTheOneInUse()
    {
        var plan = PlanBlock.Compile(
            """
            lanewright: 1
            standards: my-interface-types.csv
            # file: my-interface-types.csv
            subject,field,value,unit,document,mark
            400GBASE-DR4,reach-os2,400,m,house rule,common practice
            """).Plan!;
        Assert.Equal("400", plan.Standards.Interface("400GBASE-DR4")!.Sheet.Word("reach-os2"));
    }
}
