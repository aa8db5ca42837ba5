namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>Sets that are merged; each is known by its lowest element.</summary>
internal sealed class UnionFind(int count)
{
    private readonly int[] parent = [.. Enumerable.Range(0, count)];

    /// <summary>The lowest element of the set an element is in.</summary>
    public int Find(int element)
    {
        while (parent[element] != element)
        {
            parent[element] = parent[parent[element]];
            element = parent[element];
        }
        return element;
    }

    /// <summary>Merges two sets.</summary>
    public void Join(int first, int second)
    {
        var (a, b) = (Find(first), Find(second));
        if (a != b) parent[Math.Max(a, b)] = Math.Min(a, b);
    }
}
