using System.Collections.Immutable;

namespace Lanewright.Engineering.Choice;

/// <summary>Gives one array for all that hold the same, so that records of arrays compare by what they hold.</summary>
internal sealed class SharedArrays<T> : IEqualityComparer<ImmutableArray<T>>
{
    private readonly HashSet<ImmutableArray<T>> known;

    public SharedArrays() => known = new(this);

    /// <summary>How many arrays are known.</summary>
    public int Count => known.Count;

    /// <summary>The one array of these values.</summary>
    public ImmutableArray<T> Of(ImmutableArray<T> values)
    {
        if (values.IsEmpty) return [];
        if (known.TryGetValue(values, out var same)) return same;
        known.Add(values);
        return values;
    }

    /// <inheritdoc/>
    public bool Equals(ImmutableArray<T> x, ImmutableArray<T> y) => x.AsSpan().SequenceEqual(y.AsSpan());

    /// <inheritdoc/>
    public int GetHashCode(ImmutableArray<T> obj)
    {
        var hash = default(HashCode);
        foreach (var value in obj) hash.Add(value);
        return hash.ToHashCode();
    }
}
