namespace Lanewright.Workbench.Desk;

/// <summary>Counts what may change a page, and wakes whoever waits for the next of it.</summary>
internal sealed class Pulse
{
    private readonly Lock gate = new();
    private TaskCompletionSource next = Begun();
    private long ticks;

    /// <summary>How often something may have changed.</summary>
    public long Ticks => Interlocked.Read(ref ticks);

    /// <summary>Waits until the count is another, or until a time is over.</summary>
    /// <param name="seen">The count that who waits has seen.</param>
    /// <param name="most">The longest time to wait.</param>
    /// <param name="gone">Nobody waits any more.</param>
    public async Task<long> Next(long seen, TimeSpan most, CancellationToken gone)
    {
        Task changed;
        lock (gate) changed = next.Task;
        if (Ticks == seen) await Task.WhenAny(changed, Task.Delay(most, gone)).ConfigureAwait(false);
        return Ticks;
    }

    /// <summary>Something may have changed.</summary>
    public void Tick()
    {
        TaskCompletionSource old;
        lock (gate)
        {
            Interlocked.Increment(ref ticks);
            old = next;
            next = Begun();
        }
        old.TrySetResult();
    }

    private static TaskCompletionSource Begun() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
