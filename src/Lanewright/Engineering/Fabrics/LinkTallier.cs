using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts how the links of a set are made: every length from the places, legs of a fan-out as long as its longest. Its loops
/// run over every link of a fabric, so they are compiled at full speed from the first.</summary>
internal sealed class LinkTallier(LinkPricer pricer, RackRoute route)
{
    /// <summary>The tally of a set of links.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public LinkTally Of(PlacedFabric fabric, FabricLinks links)
    {
        var from = new TallyEnd(fabric, links.From, route);
        var to = new TallyEnd(fabric, links.To, route);
        var spots = Spots(fabric.Hall, links, from, to);
        RaiseToLongest(spots, from, to);
        var ends = new LinkEnds(from.Use, to.Use);
        var kinds = new Dictionary<long, Count>();
        var kindOf = new Count[spots.Length];
        var (lastKey, last) = (-1L, default(Count));
        for (var i = 0; i < spots.Length; i++)
        {
            ref readonly var spot = ref spots[i];
            var place = pricer.Grid.PlaceOf(Length.FromMetres(spot.Metres));
            var isFromRaised = from.IsRaised[spot.FromPort / from.Use.Mode.Ways];
            var isToRaised = to.IsRaised[spot.ToPort / to.Use.Mode.Ways];
            var key = ((((long)place * 4) + (isFromRaised ? 2 : 0) + (isToRaised ? 1 : 0)) * from.Types.Count * to.Types.Count)
                + (from.TypeOf[spot.From] * to.Types.Count) + to.TypeOf[spot.To];
            // Links that follow one another are mostly alike.
            var count = key == lastKey ? last : null;
            if (count is null && !kinds.TryGetValue(key, out count))
            {
                var way = pricer.Chosen(
                    ends, place, isFromRaised, isToRaised, from.Types[from.TypeOf[spot.From]], to.Types[to.TypeOf[spot.To]]);
                if (way is null) return new LinkTally([], [], [], Fault(ends, place));
                kinds[key] = count = new Count(way, ends.Shape);
            }
            count.Add(spot.FromPort % from.Use.Mode.Ways == 0, spot.ToPort % to.Use.Mode.Ways == 0);
            kindOf[i] = count;
            (lastKey, last) = (key, count);
        }
        return new LinkTally([.. kinds.Values.Select(c => c.Line())], Watts(spots, kindOf, from, isFrom: true),
            Watts(spots, kindOf, to, isFrom: false), "")
        {
            Laid = fabric.Hall.Ways is { } ways ? Laid(ways.Net, spots, kindOf, from, to) : [],
        };
    }

    private string Fault(LinkEnds ends, int place) =>
        $"nothing in the catalogue carries {ends.From.Mode} of {ends.From.Cage.FormFactor.Name} "
        + $"to {ends.To.Mode} of {ends.To.Cage.FormFactor.Name} over {pricer.Grid.LengthOf(place)}";

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private LinkSpot[] Spots(FabricHall hall, FabricLinks links, TallyEnd from, TallyEnd to)
    {
        if (links.RunLength > 0)
        {
            var runs = new LinkSpot[from.Count];
            for (var i = 0; i < runs.Length; i++)
                runs[i] = new LinkSpot(i, i / links.RunLength, 0, i % links.RunLength, Metres(hall, from, i, to, i / links.RunLength));
            return runs;
        }
        var spots = new LinkSpot[from.Count * to.Count * links.Parallel];
        var at = 0;
        for (var i = 0; i < from.Count; i++)
        {
            for (var j = 0; j < to.Count; j++)
            {
                var metres = Metres(hall, from, i, to, j);
                for (var k = 0; k < links.Parallel; k++)
                    spots[at++] = new LinkSpot(i, j, (j * links.Parallel) + k, (i * links.Parallel) + k, metres);
            }
        }
        return spots;
    }

    /// <summary>Cables by the racks they join: of a fan-out one for each two racks, as its legs go each to its own.</summary>
    private static ImmutableArray<LaidCables> Laid(WayNet net, LinkSpot[] spots, Count[] kindOf, TallyEnd from, TallyEnd to)
    {
        var (fromWays, toWays) = (from.Use.Mode.Ways, to.Use.Mode.Ways);
        var perDevice = toWays > 1 ? to.IsRaised.Length : from.IsRaised.Length;
        var laid = new Dictionary<WayQuestion, (int Cables, double Area)>();
        var known = new HashSet<(int Bundle, int From, int To)>();
        for (var i = 0; i < spots.Length; i++)
        {
            var (one, other) = (spots[i].From, spots[i].To);
            var key = net.QuestionOf(from.Racks[one], from.Heights[one], to.Racks[other], to.Heights[other], 0);
            if (fromWays * toWays > 1 && !known.Add((Bundle(spots[i], fromWays, toWays, perDevice), key.From, key.To))) continue;
            var before = laid.GetValueOrDefault(key);
            laid[key] = (before.Cables + 1, before.Area + SegmentFill.Round(kindOf[i].Solution.Cable.Diameter));
        }
        return [.. laid.Select(l => new LaidCables(l.Key, l.Value.Cables, l.Value.Area))];
    }

    private double Metres(FabricHall hall, TallyEnd from, int i, TallyEnd to, int j) =>
        hall.Between(route, from.Racks[i], from.Heights[i], to.Racks[j], to.Heights[j]).Metres;

    private static void RaiseToLongest(LinkSpot[] spots, TallyEnd from, TallyEnd to)
    {
        var (fromWays, toWays) = (from.Use.Mode.Ways, to.Use.Mode.Ways);
        if (fromWays == 1 && toWays == 1) return;
        var perDevice = toWays > 1 ? to.IsRaised.Length : from.IsRaised.Length;
        var longest = new double[(toWays > 1 ? to.Count : from.Count) * perDevice];
        foreach (ref readonly var spot in spots.AsSpan())
        {
            ref var most = ref longest[Bundle(spot, fromWays, toWays, perDevice)];
            if (spot.Metres > most) most = spot.Metres;
        }
        foreach (ref var spot in spots.AsSpan()) spot = spot with { Metres = longest[Bundle(spot, fromWays, toWays, perDevice)] };
    }

    private static int Bundle(in LinkSpot spot, int fromWays, int toWays, int perDevice) =>
        toWays > 1 ? (spot.To * perDevice) + (spot.ToPort / toWays) : (spot.From * perDevice) + (spot.FromPort / fromWays);

    /// <summary>What sits in the cages of each device: the first part of a split cage stands for its module.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double[] Watts(LinkSpot[] spots, Count[] kindOf, TallyEnd end, bool isFrom)
    {
        var watts = new double[end.Count];
        for (var i = 0; i < spots.Length; i++)
        {
            var (device, port) = isFrom ? (spots[i].From, spots[i].FromPort) : (spots[i].To, spots[i].ToPort);
            if (port % end.Use.Mode.Ways == 0) watts[device] += isFrom ? kindOf[i].FromWatts : kindOf[i].ToWatts;
        }
        return watts;
    }

    private sealed class Count
    {
        private long links;
        private long fromCages;
        private long toCages;

        public Count(Solution solution, FanShape shape)
        {
            Solution = solution;
            (FromWatts, ToWatts) = solution.WattsIn(shape);
        }

        public Solution Solution { get; }

        public double FromWatts { get; }

        public double ToWatts { get; }

        public void Add(bool isFromCage, bool isToCage)
        {
            links++;
            if (isFromCage) fromCages++;
            if (isToCage) toCages++;
        }

        public TallyLine Line() => new(Solution, links, fromCages, toCages);
    }
}
