using System.Collections.Concurrent;

namespace Lanewright.Workbench.Desk;

/// <summary>Work that somebody may be waiting for, by the place it is shown at: when it began, and what a person broke off.</summary>
public sealed class LongWork(TimeProvider clock)
{
    private readonly ConcurrentDictionary<string, End> begun = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> brokenOff = new(StringComparer.Ordinal);

    /// <summary>Work at a place goes on until what comes back is disposed of. Where the same is begun anew before that, from a newer
    /// text, it goes on until the newer ends.</summary>
    public IDisposable Begin(string place) => begun[place] = new End(this, place, clock.GetTimestamp());

    /// <summary>How long work at a place has gone on; null when none does.</summary>
    public TimeSpan? AgeOf(string place) => begun.TryGetValue(place, out var work) ? clock.GetElapsedTime(work.Since) : null;

    /// <summary>A person does not want to wait for it; it is not begun again until they ask.</summary>
    public void BreakOff(string place) => brokenOff[place] = true;

    /// <summary>A person wants it after all.</summary>
    public void Resume(string place) => brokenOff.TryRemove(place, out _);

    /// <summary>Whether a person broke it off.</summary>
    public bool IsBrokenOff(string place) => brokenOff.ContainsKey(place);

    private sealed class End(LongWork work, string place, long since) : IDisposable
    {
        public long Since => since;

        public void Dispose() => work.begun.TryRemove(new KeyValuePair<string, End>(place, this));
    }
}
