namespace Lanewright.Engineering.Placement;

/// <summary>Gives each of several things a place of its own at the least cost in all: the Hungarian method with potentials,
/// exact.</summary>
public static class Assignment
{
    /// <summary>The place of each thing.</summary>
    /// <param name="cost">Cost by thing and place; not fewer places than things. Infinity where a thing cannot be.</param>
    public static int[] Solve(double[,] cost)
    {
        var (things, places) = (cost.GetLength(0), cost.GetLength(1));
        if (places < things) throw new ArgumentException("there are fewer places than things", nameof(cost));
        var (ofThing, ofPlace) = (new double[things + 1], new double[places + 1]);
        // Numbers count from 1; place 0 stands for none.
        var (taken, from) = (new int[places + 1], new int[places + 1]);
        for (var thing = 1; thing <= things; thing++) Place(thing);
        var found = new int[things];
        for (var place = 1; place <= places; place++)
            if (taken[place] > 0) found[taken[place] - 1] = place - 1;
        return found;

        void Place(int thing)
        {
            taken[0] = thing;
            var at = 0;
            var least = new double[places + 1];
            var done = new bool[places + 1];
            Array.Fill(least, double.PositiveInfinity);
            do
            {
                done[at] = true;
                at = Next(at, least, done);
            }
            while (taken[at] != 0);
            while (at != 0)
            {
                taken[at] = taken[from[at]];
                at = from[at];
            }
        }

        int Next(int at, double[] least, bool[] done)
        {
            var (thing, next, delta) = (taken[at], -1, double.PositiveInfinity);
            for (var place = 1; place <= places; place++)
            {
                if (done[place]) continue;
                var reduced = Math.Min(cost[thing - 1, place - 1], Far) - ofThing[thing] - ofPlace[place];
                if (reduced < least[place]) (least[place], from[place]) = (reduced, at);
                if (least[place] < delta) (delta, next) = (least[place], place);
            }
            for (var place = 0; place <= places; place++)
            {
                if (done[place])
                {
                    ofThing[taken[place]] += delta;
                    ofPlace[place] -= delta;
                }
                else least[place] -= delta;
            }
            return next;
        }
    }

    /// <summary>Beyond every sum of money that cables cost.</summary>
    private const double Far = 1e15;
}
