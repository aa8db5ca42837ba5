using Lanewright.Workbench.Desk;

namespace Lanewright.Tests.Workbench;

/// <summary>What wakes the one who judges.</summary>
public sealed class BellTests
{
    private static readonly TimeSpan Never = Timeout.InfiniteTimeSpan;

    [Fact]
    public async Task Rings_AreHeardTogether()
    {
        var bell = new Bell();
        Assert.True(await bell.Heard(Never));
        bell.Ring();
        bell.Ring();
        Assert.True(bell.IsRinging);
        Assert.True(await bell.Heard(Never));
        Assert.False(bell.IsRinging);
        Assert.False(await bell.Heard(TimeSpan.Zero));
    }

    // A text that came just before the desk was closed took the wake-up of the closing with it, and who closed waited for ever.
    [Fact]
    public async Task Closing_IsHeardAgain_ThoughItRangTogetherWithAText()
    {
        var bell = new Bell();
        bell.Ring();
        bell.Close();
        Assert.True(await bell.Heard(Never));
        Assert.True(bell.IsClosed);
        Assert.True(await bell.Heard(Never));
    }

    [Fact]
    public async Task WhoWaits_HearsAClosing()
    {
        var bell = new Bell();
        await bell.Heard(Never);
        var waiting = bell.Heard(Never);
        Assert.False(waiting.IsCompleted);
        bell.Close();
        Assert.True(await waiting);
    }
}
