namespace Lanewright.Engineering.Pathways;

/// <summary>Points in order of their distance; of those equally far the one of the lower number first.</summary>
internal sealed class WayHeap(int points)
{
    private readonly double[] keys = new double[points];
    private readonly int[] place = new int[points];
    private readonly int[] order = new int[points];
    private int count;

    /// <summary>Forgets all points.</summary>
    public void Clear()
    {
        count = 0;
        Array.Fill(place, -1);
    }

    /// <summary>Puts a point at a distance that is not above the one it had.</summary>
    public void Lower(int point, double key)
    {
        keys[point] = key;
        if (place[point] < 0)
        {
            place[point] = count;
            order[count++] = point;
        }
        Up(place[point]);
    }

    /// <summary>Takes the nearest point out; false where none is left.</summary>
    public bool TryTake(out int point)
    {
        if (count == 0)
        {
            point = -1;
            return false;
        }
        point = order[0];
        place[point] = -1;
        var last = order[--count];
        if (count == 0) return true;
        order[0] = last;
        place[last] = 0;
        Down(0);
        return true;
    }

    private bool IsBefore(int one, int other) => keys[one] < keys[other] || (keys[one] == keys[other] && one < other);

    private void Up(int at)
    {
        var point = order[at];
        while (at > 0)
        {
            var parent = (at - 1) / 2;
            if (!IsBefore(point, order[parent])) break;
            order[at] = order[parent];
            place[order[at]] = at;
            at = parent;
        }
        order[at] = point;
        place[point] = at;
    }

    private void Down(int at)
    {
        var point = order[at];
        while (true)
        {
            var child = (2 * at) + 1;
            if (child >= count) break;
            if (child + 1 < count && IsBefore(order[child + 1], order[child])) child++;
            if (!IsBefore(order[child], point)) break;
            order[at] = order[child];
            place[order[at]] = at;
            at = child;
        }
        order[at] = point;
        place[point] = at;
    }
}
