using System.Collections.Concurrent;

namespace Lanewright.Workbench.Desk;

/// <summary>Work that somebody may be waiting for, by the place it is shown at: when it began, and what a person broke off.</summary>
internal sealed class LongWork(TimeProvider clock)
{
    private readonly ConcurrentDictionary<string, long> begun = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> brokenOff = new(StringComparer.Ordinal);

    /// <summary>Work at a place goes on until what comes back is disposed of.</summary>
    public IDisposable Begin(string place)
    {
        begun[place] = clock.GetTimestamp();
        return new End(this, place);
    }

    /// <summary>How long work at a place has gone on; null when none does.</summary>
    public TimeSpan? AgeOf(string place) => begun.TryGetValue(place, out var since) ? clock.GetElapsedTime(since) : null;

    /// <summary>A person does not want to wait for it; it is not begun again until they ask.</summary>
    public void BreakOff(string place) => brokenOff[place] = true;

    /// <summary>A person wants it after all.</summary>
    public void Resume(string place) => brokenOff.TryRemove(place, out _);

    /// <summary>Whether a person broke it off.</summary>
    public bool IsBrokenOff(string place) => brokenOff.ContainsKey(place);

    private sealed class End(LongWork work, string place) : IDisposable
    {
        public void Dispose() => work.begun.TryRemove(place, out _);
    }
}
