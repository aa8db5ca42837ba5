namespace Lanewright.Engineering.Pathways;

/// <summary>Two ways of two sides that have no stretch and no route in common, together as short as there are. Where the shortest two have
/// something in common it is closed to the one or to the other, and both are tried, the shortest two first (conflict-based search: Sharon,
/// Stern, Felner and Sturtevant 2015). Where nothing is left to try there are no two such ways, which is a proof.</summary>
/// <param name="net">The graph.</param>
internal sealed class TwoSideSearch(WayNet net)
{
    /// <summary>Choices tried for two racks at most: each searches a hall once.</summary>
    private const int MostTried = 500;

    /// <summary>Choices tried for a plan at most.</summary>
    private const int MostInAll = 20_000;

    private readonly WaySearch search = new(net);
    private readonly bool[] closed = new bool[net.Closable];
    private int tried;

    private sealed record Choice(CableWay One, CableWay Other, Closing? Closings)
    {
        public double Total => One.Total + Other.Total;
    }

    /// <summary>Something that is closed to one of the two, and all that was before.</summary>
    private sealed record Closing(int What, bool IsOfOne, Closing? Before);

    /// <summary>The two ways; null where none were found, and then whether it is certain that there are none.</summary>
    /// <param name="one">Where one way is looked for.</param>
    /// <param name="other">Where the other is.</param>
    public ((CableWay One, CableWay Other)? Ways, bool IsProven) Find(WayQuestion one, WayQuestion other)
    {
        if (Shortest(one, null, isOfOne: true) is not { } first || Shortest(other, null, isOfOne: false) is not { } second)
            return (null, false);
        var open = new PriorityQueue<Choice, (double Total, int Number)>();
        var number = 0;
        Add(new Choice(first, second, null));
        while (open.TryDequeue(out var choice, out _))
        {
            if (Common(choice) is not { } common) return ((choice.One, choice.Other), false);
            if (number > MostTried || tried > MostInAll) return (null, false);
            foreach (var isOfOne in new[] { true, false })
            {
                var closings = new Closing(common, isOfOne, choice.Closings);
                if (Shortest(isOfOne ? one : other, closings, isOfOne) is not { } way) continue;
                Add(isOfOne ? choice with { One = way, Closings = closings } : choice with { Other = way, Closings = closings });
            }
        }
        return (null, true);

        void Add(Choice choice) => open.Enqueue(choice, (choice.Total, number++));
    }

    private int? Common(Choice choice)
    {
        foreach (var what in choice.One.Closing(net).Intersect(choice.Other.Closing(net))) return what;
        return null;
    }

    private CableWay? Shortest(WayQuestion question, Closing? closings, bool isOfOne)
    {
        tried++;
        Array.Fill(closed, false);
        for (var closing = closings; closing is not null; closing = closing.Before)
            if (closing.IsOfOne == isOfOne) closed[closing.What] = true;
        return search.Past(question, what => closed[what]);
    }
}
