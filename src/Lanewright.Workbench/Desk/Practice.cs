namespace Lanewright.Workbench.Desk;

/// <summary>Judges edits that nobody made while nobody makes any. A program that was just started is slow on every way it goes for the
/// first times, and the first stroke of a person ought to be as quick as the tenth. Its findings are thrown
/// away.</summary>
internal sealed class Practice
{
    /// <summary>Fewer than the states of a plan that earlier work is kept for, so that none of it is lost to practice.</summary>
    private const int MostRounds = 12;

    /// <summary>How long nothing may have been wanted before a round begins.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(4);

    private readonly Lock gate = new();
    private TimeSpan spent;
    private CancellationTokenSource? going;

    /// <summary>Rounds that were begun.</summary>
    public int Rounds { get; private set; }

    /// <summary>Whether there is anything left to practise.</summary>
    public bool IsLeft => Rounds < MostRounds && spent < MostTime;

    /// <summary>Judges the texts without the last line of the first, and the next time as they are: a change that something follows
    /// from, and its undoing.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="texts">The texts as they are, by name.</param>
    /// <param name="first">The first file.</param>
    /// <param name="earlier">What earlier compilations found.</param>
    /// <param name="isWanted">Whether somebody waits for something else by now.</param>
    public void Round(
        PlanFolder folder, Dictionary<string, string> texts, string first, EarlierWork earlier, Func<bool> isWanted)
    {
        using var effort = new CancellationTokenSource();
        lock (gate) going = effort;
        var since = TimeProvider.System.GetTimestamp();
        Rounds++;
        try
        {
            if (isWanted()) return;
            var text = texts.GetValueOrDefault(first, "");
            texts[first] = Rounds % 2 > 0 ? WithoutLastLine(text) : text + "\n";
            Compilation.Of(new DeskFiles(folder, texts), first, earlier: earlier, cancel: effort.Token);
        }
        catch (OperationCanceledException) when (effort.IsCancellationRequested)
        {
            // Somebody typed.
        }
        // What an edit that nobody made brings to light is told when somebody makes it; until then the desk stays open.
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            Rounds = MostRounds;
        }
        finally
        {
            lock (gate) going = null;
            spent += TimeProvider.System.GetElapsedTime(since);
        }
    }

    private static string WithoutLastLine(string text)
    {
        var whole = text.TrimEnd();
        return whole[..(whole.LastIndexOf('\n') + 1)];
    }

    /// <summary>Ends the round that goes on.</summary>
    public void BreakOff()
    {
        lock (gate) going?.Cancel();
    }
}
