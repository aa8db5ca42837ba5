using Lanewright.Rules;

namespace Lanewright.Workbench.Desk;

/// <summary>The judging of one state of the texts, and what is worked out from its result later: what it is at, and how to break it
/// off.</summary>
/// <param name="clock">Tells the time.</param>
/// <param name="effort">Breaks it off. Nobody disposes of it: pages of an old result may still look at it.</param>
internal sealed class Judging(TimeProvider clock, CancellationTokenSource effort)
{
    private readonly long since = clock.GetTimestamp();
    private volatile string step = "";

    /// <summary>What it is at, in words.</summary>
    public string Step => step;

    /// <summary>Whether it was broken off.</summary>
    public bool IsBrokenOff => effort.IsCancellationRequested;

    /// <summary>How long ago it began.</summary>
    public TimeSpan Age => clock.GetElapsedTime(since);

    /// <summary>Judges.</summary>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public JudgedPlan Of(DeskFiles files, string first, EarlierWork earlier)
    {
        var judged = Compilation.Of(files, first, words => step = words, earlier, effort.Token);
        // What is worked out from the result later has words of its own, or none.
        step = "";
        return judged;
    }

    /// <summary>Breaks off whatever of it is still going on.</summary>
    public void BreakOff() => effort.Cancel();
}
