using Lanewright.Model.Devices;
using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>Lists the pairs of devices a statement joins, in a fixed order.</summary>
internal sealed class LinkPairs(DeviceTable devices)
{
    /// <summary>Calls for every link with its two devices. Returns how many there were.</summary>
    public long ForEach(LinkStatement statement, Action<int, int> link)
    {
        return statement.Pattern switch
        {
            LinkPattern.Paired => Paired(statement, link),
            LinkPattern.EachToEach => EachToEach(statement, link),
            LinkPattern.Striped => Striped(statement, link),
            LinkPattern.SameRack => Together(statement, d => devices.RackIndex(d), link),
            LinkPattern.InRuns => InRuns(statement, link),
            _ => Together(statement, RowOf, link),
        };
    }

    /// <summary>How many links a statement makes at most, without listing them.</summary>
    public long CountUpTo(LinkStatement statement) => statement.Pattern switch
    {
        LinkPattern.Paired => (long)Math.Min(statement.From.Devices.Length, statement.To.Devices.Length) * statement.Count,
        LinkPattern.Striped => (long)statement.From.Devices.Length * statement.Count,
        LinkPattern.SameRack => CountTogether(statement, d => devices.RackIndex(d)),
        LinkPattern.SameRow => CountTogether(statement, RowOf),
        LinkPattern.InRuns => (long)statement.From.Devices.Length * statement.ToRun * statement.Count,
        _ => (long)statement.From.Devices.Length * statement.To.Devices.Length * statement.Count,
    };

    private static long Paired(LinkStatement statement, Action<int, int> link)
    {
        var pairs = Math.Min(statement.From.Devices.Length, statement.To.Devices.Length);
        for (var i = 0; i < pairs; i++) Times(statement.Count, statement.From.Devices[i], statement.To.Devices[i], link);
        return (long)pairs * statement.Count;
    }

    private static long EachToEach(LinkStatement statement, Action<int, int> link)
    {
        var from = statement.From.Devices;
        var to = statement.To.Devices;
        var isMesh = from.SequenceEqual(to);
        var made = 0L;
        for (var i = 0; i < from.Length; i++)
        {
            for (var j = isMesh ? i + 1 : 0; j < to.Length; j++)
            {
                Times(statement.Count, from[i], to[j], link);
                made += statement.Count;
            }
        }
        return made;
    }

    private static long Striped(LinkStatement statement, Action<int, int> link)
    {
        var to = statement.To.Devices;
        var dealt = 0L;
        foreach (var device in statement.From.Devices)
            for (var k = 0; k < statement.Count; k++) link(device, to[(int)(dealt++ % to.Length)]);
        return dealt;
    }

    private static long InRuns(LinkStatement statement, Action<int, int> link)
    {
        var made = 0L;
        for (var run = 0; run < Math.Min(LinkRuns.OfFrom(statement), LinkRuns.OfTo(statement)); run++)
        {
            var (fromStart, fromEnd) = LinkRuns.From(statement, run);
            var (toStart, toEnd) = LinkRuns.To(statement, run);
            for (var i = fromStart; i < fromEnd; i++)
            {
                for (var j = toStart; j < toEnd; j++)
                {
                    Times(statement.Count, statement.From.Devices[i], statement.To.Devices[j], link);
                    made += statement.Count;
                }
            }
        }
        return made;
    }

    private static long Together(LinkStatement statement, Func<int, int> placeOf, Action<int, int> link)
    {
        var byPlace = new Dictionary<int, List<int>>();
        foreach (var device in statement.To.Devices)
        {
            var place = placeOf(device);
            if (place < 0) continue;
            if (!byPlace.TryGetValue(place, out var list)) byPlace[place] = list = [];
            list.Add(device);
        }
        var made = 0L;
        foreach (var device in statement.From.Devices)
        {
            if (!byPlace.TryGetValue(placeOf(device), out var partners)) continue;
            foreach (var partner in partners)
            {
                if (partner == device) continue;
                Times(statement.Count, device, partner, link);
                made += statement.Count;
            }
        }
        return made;
    }

    private static long CountTogether(LinkStatement statement, Func<int, int> placeOf)
    {
        var partners = statement.To.Devices.Select(placeOf).Where(p => p >= 0).CountBy(p => p).ToDictionary();
        return statement.From.Devices.Sum(d => (long)partners.GetValueOrDefault(placeOf(d))) * statement.Count;
    }

    private static void Times(int count, int from, int to, Action<int, int> link)
    {
        for (var k = 0; k < count; k++) link(from, to);
    }

    /// <summary>A row is told by its first rack.</summary>
    private int RowOf(int device)
    {
        if (devices.Rack(device) is not { } rack) return -1;
        return rack.Index - rack.Number + 1;
    }
}
