using Lanewright.Engineering.Fabrics;

namespace Lanewright.Tests.Fabrics;

/// <summary>What is worked out from an answer later is broken off by the token of the answer.</summary>
public sealed class BrokenOffTests
{
    // Quantities are looked for side by side, and whoever waits for them has to see that it was broken off, not that several things failed.
    [Fact]
    public void BreakEvens_EndAsBrokenOff()
    {
        using var effort = new CancellationTokenSource();
        var sized = Compilation.Size(
            new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml", null, cancel: effort.Token);
        var study = sized.Study ?? throw new InvalidOperationException("nothing is asked");
        Assert.False(study.Answer.Options.IsEmpty);
        effort.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => study.BreakEvensOf([.. Enum.GetValues<BreakEvenQuantity>()]));
    }
}
