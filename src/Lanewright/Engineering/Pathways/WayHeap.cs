namespace Lanewright.Engineering.Pathways;

/// <summary>Points in order of their distance; of those equally far the one of the lower number first. A point that is put nearer stands in
/// it twice, and what is no longer true is passed over when it is taken: cheaper than moving it.</summary>
internal sealed class WayHeap(int points)
{
    private readonly double[] keys = new double[points];
    private (double Key, int Point)[] order = new (double, int)[Math.Max(Branches, points)];
    private int count;

    /// <summary>Forgets all points.</summary>
    public void Clear() => count = 0;

    /// <summary>Puts a point at a distance that is not above the one it had.</summary>
    public void Lower(int point, double key)
    {
        keys[point] = key;
        if (count == order.Length) Array.Resize(ref order, 2 * count);
        var at = count++;
        while (at > 0)
        {
            var parent = (at - 1) / Branches;
            if (!IsBefore(key, point, order[parent])) break;
            order[at] = order[parent];
            at = parent;
        }
        order[at] = (key, point);
    }

    /// <summary>Takes the nearest point out; false where none is left.</summary>
    public bool TryTake(out int point)
    {
        while (count > 0)
        {
            var (key, nearest) = order[0];
            count--;
            if (count > 0) Down(order[count]);
            if (key != keys[nearest]) continue;
            keys[nearest] = double.NaN;
            point = nearest;
            return true;
        }
        point = -1;
        return false;
    }

    private static bool IsBefore(double key, int point, (double Key, int Point) other) =>
        key < other.Key || (key == other.Key && point < other.Point);

    /// <summary>Puts what stood last in the place of what was taken.</summary>
    private void Down((double Key, int Point) last)
    {
        var at = 0;
        while (true)
        {
            var least = (Branches * at) + 1;
            if (least >= count) break;
            var end = Math.Min(least + Branches, count);
            for (var child = least + 1; child < end; child++)
                if (IsBefore(order[child].Key, order[child].Point, order[least])) least = child;
            if (!IsBefore(order[least].Key, order[least].Point, last)) break;
            order[at] = order[least];
            at = least;
        }
        order[at] = last;
    }

    /// <summary>Four under each: half as deep as with two, and they lie side by side.</summary>
    private const int Branches = 4;
}
