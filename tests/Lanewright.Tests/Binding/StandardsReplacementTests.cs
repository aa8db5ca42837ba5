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
    [InlineData("my-interface-types.csv", "400GBASE-DR4,reach-oss2,400,m,house rule,common practice", "LW0203")]
    [InlineData("my-cage-modes.csv", "8x50G/3x100G,signal,50G,,house rule,common practice")]
    public void Row_IsReadOrReported(string file, string row, params string[] codes) =>
        Expect.Codes($"lanewright: 1\nstandards: {file}\n# file: {file}\nsubject,field,value,unit,document,mark\n{row}\n", codes);

    [Theory]
    [InlineData(100)]
    [InlineData(50, "LW2403")]
    public void ReplacedReach_DecidesAboutShippedModules(int reach, params string[] codes) =>
        Expect.Codes(
            $$"""
            lanewright: 1
            standards: my-interface-types.csv
            devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }
            links: { up: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m } }
            # file: my-interface-types.csv
            subject,field,value,unit,document,mark
            400GBASE-DR4,reach-os2,{{reach}},m,house rule,common practice
            """,
            codes);
}
