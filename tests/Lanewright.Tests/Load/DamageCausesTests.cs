using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Where losses come from, against closed forms of a leaf-spine fabric (derived) and against what the solver of loads and the
/// sweep say in sum, which reckon without pairs.</summary>
public sealed class DamageCausesTests
{
    private const double Exact = 1e-6;
    private const int Leaves = 4;
    private const int Hosts = 8;
    private const double Rate = 200;

    private static readonly DemandStudy Study =
        LoadPlans.Study(LoadPlans.LeafSpine(Leaves, 2, Hosts, "  all: { kind: all-to-all, among: host }\n"));

    [Fact]
    public void AllSpinesDown_StrandWhatLeavesALeaf()
    {
        var outage = Together(u => u.Kind == FailureKind.Switch && u.Name.StartsWith("spine", StringComparison.Ordinal));
        var causes = DamageCauses.Of(Study, outage)!;
        var all = Leaves * Hosts;
        Assert.Equal(all * Rate, causes.SentWhole, Exact);
        Assert.Equal(0, causes.UnsentGigabits, Exact);
        // Of the other hosts, each sends an even share to those of other leaves.
        Assert.Equal(all * Rate * (all - Hosts) / (all - 1), causes.Stranded.Sum(f => f.Gigabits), Exact);
        Assert.Equal((Leaves - 1) * Hosts, causes.CutOff.Sum(c => c.Hosts));
        Assert.All(causes.Stranded, f => Assert.NotEqual(f.From, f.To));
    }

    [Fact]
    public void LeafDown_CutsOffItsHostsWithNoLinkLeft()
    {
        var causes = DamageCauses.Of(Study, Together(u => u.Kind == FailureKind.Switch
            && u.Name.StartsWith("leaf", StringComparison.Ordinal) && u.Name.EndsWith('1')))!;
        Assert.Equal(Hosts, causes.CutOff.Sum(c => c.Hosts));
        Assert.All(causes.CutOff, c => Assert.Equal(0, c.LinksLeft));
    }

    [Theory]
    [InlineData("  all: { kind: all-to-all, among: host }\n")]
    [InlineData("  shift: { kind: permutation, among: host }\n")]
    public void Causes_AddUpToWhatTheSweepSays(string demand)
    {
        var study = LoadPlans.Study(LoadPlans.LeafSpine(Leaves, 2, Hosts, demand));
        var lost = 0;
        foreach (var failure in study.Sweep!.Classes)
        {
            var causes = DamageCauses.Of(study, study.Fabric.Failures[failure.Units[0]].Outage)!;
            Assert.Equal(failure.MembersCut, causes.CutOff.Sum(c => c.Hosts));
            Assert.Equal(failure.LostGigabits, causes.UnsentGigabits + causes.Stranded.Sum(f => f.Gigabits), Exact);
            if (failure.LostGigabits > 0) lost++;
        }
        Assert.True(lost > 0, "no failure of this fabric loses traffic, so that nothing was compared");
    }

    private static Outage Together(Func<FailureUnit, bool> isDown) =>
        Study.Fabric.Failures.Where(isDown).Aggregate(Outage.None, (all, unit) => all.With(unit.Outage));
}
