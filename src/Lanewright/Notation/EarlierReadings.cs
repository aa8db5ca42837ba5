using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>What was made of texts before, for as long as the texts are the very same. Findings are told again as they were.</summary>
internal sealed class EarlierReadings
{
    private readonly Dictionary<Key, Reading> readings = [];
    private long round;

    /// <summary>Begins with another state of the texts.</summary>
    /// <param name="most">Rounds after which a reading that nobody wanted again is dropped.</param>
    public void NextRound(long most)
    {
        round++;
        foreach (var (key, reading) in readings)
            if (reading.LastWanted + most < round) readings.Remove(key);
    }

    /// <summary>What is made of texts, now or before.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="under">What else it depends on, told apart by identity; null for nothing.</param>
    /// <param name="sources">The texts.</param>
    /// <param name="findings">Where faults go.</param>
    /// <param name="read">Makes it.</param>
    public T Of<T>(string what, object? under, ImmutableArray<SourceText> sources, FindingSink findings, Func<T> read)
    {
        var key = new Key(what, under, sources);
        if (readings.TryGetValue(key, out var known) && known.Value is T same && findings.IsFreshFor(sources, known.Findings))
        {
            known.LastWanted = round;
            foreach (var finding in known.Findings) findings.Add(finding);
            return same;
        }
        var isFresh = findings.IsFreshFor(sources, []);
        var value = findings.Recording(read, out var found);
        // What stood there before may have changed what was found; such a reading is none for later.
        if (value is not null && isFresh && findings.IsFreshFor([], [])) readings[key] = new Reading(value, found) { LastWanted = round };
        return value;
    }

    private sealed class Reading(object value, ImmutableArray<Finding> findings)
    {
        public object Value { get; } = value;

        public ImmutableArray<Finding> Findings { get; } = findings;

        public long LastWanted { get; set; }
    }

    private readonly struct Key(string what, object? under, ImmutableArray<SourceText> sources) : IEquatable<Key>
    {
        private readonly string what = what;
        private readonly object? under = under;
        private readonly ImmutableArray<SourceText> sources = sources;

        public bool Equals(Key other) =>
            what == other.what && ReferenceEquals(under, other.under) && sources.SequenceEqual(other.sources);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode() => HashCode.Combine(what, sources.Length, sources.Length == 0 ? null : sources[0]);
    }
}
