namespace Lanewright.Workbench.Desk;

/// <summary>Wakes the one who judges. Rings that nobody heard yet are heard together, and that the desk is closed is never lost among
/// them.</summary>
public sealed class Bell
{
    private readonly Lock gate = new();
    private TaskCompletionSource next = Begun();
    private bool isRinging = true;
    private bool isClosed;

    /// <summary>Whether nothing will be wanted any more.</summary>
    public bool IsClosed
    {
        get
        {
            lock (gate) return isClosed;
        }
    }

    /// <summary>Whether something is wanted that nobody heard of yet; at first everything is.</summary>
    public bool IsRinging
    {
        get
        {
            lock (gate) return isRinging;
        }
    }

    /// <summary>Something is wanted.</summary>
    public void Ring()
    {
        lock (gate)
        {
            isRinging = true;
            next.TrySetResult();
        }
    }

    /// <summary>Nothing is wanted any more; whoever waits hears it, now and whenever he waits again.</summary>
    public void Close()
    {
        lock (gate) isClosed = true;
        Ring();
    }

    /// <summary>Waits until something is wanted or the bell is closed; no when a time is over before.</summary>
    public async Task<bool> Heard(TimeSpan most)
    {
        Task ring;
        lock (gate)
        {
            if (Hears()) return true;
            ring = next.Task;
        }
        await Task.WhenAny(ring, Task.Delay(most)).ConfigureAwait(false);
        lock (gate) return Hears();
    }

    private bool Hears()
    {
        if (!isRinging) return isClosed;
        isRinging = false;
        next = Begun();
        return true;
    }

    private static TaskCompletionSource Begun() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
