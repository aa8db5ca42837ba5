using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Collects the paths of a plug without numbered places and puts them in order.</summary>
internal sealed class PlugLayoutBuilder(bool isFar)
{
    private readonly List<(PlugRow Leaving, PlugRow Coming)> paths = [];

    /// <summary>Adds a path and its way back.</summary>
    public void Path(ImmutableArray<MediaLane> leaving, ImmutableArray<MediaLane> coming) =>
        paths.Add((new PlugRow("", leaving), new PlugRow("", coming)));

    /// <summary>All that leave together and all that come together; the second end turns the groups round to face the first.</summary>
    public PlugLayout GroupedByDirection(string name)
    {
        var rows = ImmutableArray.CreateBuilder<PlugRow>();
        foreach (var (leaving, coming) in paths) rows.Add(isFar ? coming : leaving);
        for (var i = 0; i < paths.Count; i++) rows.Add((isFar ? paths[i].Leaving : paths[i].Coming) with { IsSetOff = i == 0 });
        ImmutableArray<int> upper = [.. Enumerable.Range(0, paths.Count)];
        ImmutableArray<int> lower = [.. Enumerable.Range(paths.Count, paths.Count)];
        return isFar ? PlugLayout.Of(name, rows.ToImmutable(), lower, upper) : PlugLayout.Of(name, rows.ToImmutable(), upper, lower);
    }

    /// <summary>Each path beside its way back.</summary>
    public PlugLayout PairByPair(string name)
    {
        var rows = ImmutableArray.CreateBuilder<PlugRow>();
        for (var i = 0; i < paths.Count; i++)
        {
            rows.Add((isFar ? paths[i].Coming : paths[i].Leaving) with { IsSetOff = i > 0 });
            rows.Add(isFar ? paths[i].Leaving : paths[i].Coming);
        }
        ImmutableArray<int> first = [.. Enumerable.Range(0, paths.Count).Select(i => i * 2)];
        ImmutableArray<int> second = [.. first.Select(i => i + 1)];
        return isFar ? PlugLayout.Of(name, rows.ToImmutable(), second, first) : PlugLayout.Of(name, rows.ToImmutable(), first, second);
    }
}
