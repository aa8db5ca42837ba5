using Lanewright.Workbench.Desk;

namespace Lanewright.Tests.Workbench;

/// <summary>Work that somebody may be waiting for.</summary>
public sealed class LongWorkTests
{
    // The sheet of a text that was replaced ends while the same sheet of the newer text is being made: that one goes on, says so, and can
    // be broken off.
    [Fact]
    public void WorkBegunAnew_GoesOnThoughTheOlderEnds()
    {
        var works = new LongWork(TimeProvider.System);
        var older = works.Begin("options");
        var newer = works.Begin("options");
        older.Dispose();
        Assert.NotNull(works.AgeOf("options"));
        newer.Dispose();
        Assert.Null(works.AgeOf("options"));
    }
}
