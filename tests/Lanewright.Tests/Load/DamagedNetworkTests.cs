using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Several things down at once, against closed forms of a leaf-spine fabric (derived) and against single failures, which are
/// computed another way round: class by class.</summary>
public sealed class DamagedNetworkTests
{
    private const double Exact = 1e-9;
    private const int Spines = 4;
    private const int Hosts = 8;

    private static readonly DemandStudy Study =
        LoadPlans.Study(LoadPlans.LeafSpine(4, Spines, Hosts, "  shift: { kind: permutation, among: host }\n"));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void SpinesDown_LeaveTheirLoadToTheOthers(int down)
    {
        var damage = With([.. Units(FailureKind.Switch).Where(u => u.Name.StartsWith("spine", StringComparison.Ordinal)).Take(down)]);
        // What the hosts of a leaf send, in uplinks, over the spines that are left.
        Assert.Equal(Hosts * 200 / 400.0 / (Spines - down), damage.MaxUtilisation.Value, Exact);
        Assert.Equal(0, damage.HostsCut + damage.HostsDown);
        Assert.Equal(0, damage.LostGigabits, Exact);
    }

    [Fact]
    public void AllSpinesDown_CutOffAllLeavesButOne()
    {
        var damage = With([.. Units(FailureKind.Switch).Where(u => u.Name.StartsWith("spine", StringComparison.Ordinal))]);
        Assert.Equal(3 * Hosts, damage.HostsCut);
        Assert.True(damage.LostGigabits > 0);
    }

    [Fact]
    public void OneThingDown_IsWhatTheSweepSaysOfIt()
    {
        foreach (var failure in Study.Sweep!.Classes)
        {
            var damage = With([Study.Fabric.Failures[failure.Units[0]]]);
            Assert.Equal(Study.After(failure).Value, damage.MaxUtilisation.Value, Exact);
            Assert.Equal(failure.MembersCut, damage.HostsCut);
            Assert.Equal(failure.MembersDown, damage.HostsDown);
            Assert.Equal(failure.LostGigabits, damage.LostGigabits, Exact);
        }
    }

    [Fact]
    public void NothingDown_IsTheWholeNetwork()
    {
        var damage = With([]);
        for (var link = 0; link < Study.Fabric.Map.Graph.Links.Length; link++)
        {
            Assert.Equal(Study.Utilisation(link).Value, damage.Utilisation(link).Value, Exact);
            Assert.Equal(Study.Fabric.Map.Graph.Links[link].Count, damage.Left(link));
        }
        Assert.Equal(Study.Busiest(1)[0].Utilisation.Value, damage.Busiest(1)[0].Utilisation.Value, Exact);
    }

    [Fact]
    public void HostDown_IsOneFewerOfItsBundle()
    {
        var map = Study.Fabric.Map;
        var bundle = Enumerable.Range(0, map.Graph.Nodes.Length).First(n => map.Graph.Nodes[n].IsTerminal);
        var damage = DamagedNetwork.Of(Study, new Outage([], [], [new MemberOutage(bundle, 0, 1)]))!;
        Assert.Equal(1, damage.HostsDown);
        Assert.Equal(map.Devices(bundle).Length - 1, damage.Up(bundle));
    }

    private static IEnumerable<FailureUnit> Units(FailureKind kind) => Study.Fabric.Failures.Where(u => u.Kind == kind);

    private static DamagedNetwork With(FailureUnit[] down) =>
        DamagedNetwork.Of(Study, down.Aggregate(Outage.None, (all, unit) => all.With(unit.Outage)))!;
}
