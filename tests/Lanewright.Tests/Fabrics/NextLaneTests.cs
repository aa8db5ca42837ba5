namespace Lanewright.Tests.Fabrics;

/// <summary>What of an option still serves when lanes become one step faster, against what the documents say of forms and types.</summary>
public sealed class NextLaneTests
{
    [Theory]
    // QSFP-DD Hardware Specification 6.0, 1: a QSFP-DD cage takes QSFP28 modules (memory); those of 50G lanes in the catalogue list 25G.
    [InlineData("QSFP28", false, "QSFP28 of 25G lanes", true, "cages QSFP-DD of 50G lanes take them")]
    // OSFP MSA 5.0: OSFP1600 is the same form with faster contacts (memory).
    [InlineData("OSFP", false, "OSFP of 100G lanes", true, "cages OSFP1600 of 200G lanes take them")]
    [InlineData("OSFP", false, "SFP112 of 100G lanes", false, "no cage of 200G lanes takes SFP112")]
    // IEEE P802.3dj has no objective for multimode fibre: nothing with 200G lanes runs over it.
    [InlineData("OSFP", false, "100GBASE-VR1 over OM4", false, "no type of faster lanes runs over OM4")]
    [InlineData("QSFP-DD", false, "100GBASE-SR1 over OM4", false, "no type of faster lanes runs over OM4")]
    // IEEE P802.3dj: 200GBASE-DR1 over a pair of single-mode fibres to 500 m and 3 dB, as 100GBASE-DR (IEEE 802.3 clause 140).
    [InlineData("QSFP28", false, "100GBASE-DR over OS2", false, "200GBASE-DR1 is a draft, and the policy does not allow drafts")]
    [InlineData("QSFP28", true, "100GBASE-DR over OS2", true, "200GBASE-DR1 runs over them")]
    public void Parts_ServeByTheNextLaneRateOfTheirKind(string form, bool allowsDrafts, string kind, bool serves, string why)
    {
        var (_, study) = Asked.Study(Asked.Question(
            $"{{ hosts: {{ host: {{ count: 200, rate: 100G }} }}, oversubscription: '3:1', form-factors: {form} }}"
            + (allowsDrafts ? "\npolicy: { drafts: yes }" : "")));
        var option = study.Answer.Options[0];
        var found = Assert.Single(option.NextLaneRate.Kinds, k => k.Name == kind);
        Assert.Equal((serves, why), (found.Serves, found.Why));
    }

    /// <summary>Counted part by part, and by model: two counts that go different ways.</summary>
    [Theory]
    [InlineData("{ hosts: { host: { count: 1500, rate: 100G } }, oversubscription: ['3:1', '1:1'] }")]
    [InlineData("{ hosts: { host: { count: 300, rate: 25G, ports: 2 } }, oversubscription: '3:1', survive: 1 }")]
    public void Kinds_CountEveryModule(string question)
    {
        var (_, study) = Asked.Study(Asked.Question(question));
        Assert.NotEmpty(study.Answer.Options);
        foreach (var option in study.Answer.Options)
        {
            Assert.Equal(option.ModulesByModel.Sum(m => m.Count), option.NextLaneRate.Modules);
            Assert.True(option.NextLaneRate.ModulesServing <= option.NextLaneRate.Modules);
        }
    }
}
