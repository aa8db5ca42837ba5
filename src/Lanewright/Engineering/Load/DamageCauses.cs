using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Where the losses of a damaged network come from: which hosts are cut off, and which traffic finds no way.</summary>
public sealed class DamageCauses
{
    private readonly FabricGraph hurt;
    private readonly Islands whole;
    private readonly Islands left;

    private DamageCauses(FabricGraph intact, FabricGraph hurt, TrafficMatrix traffic)
    {
        this.hurt = hurt;
        (whole, left) = (new Islands(intact), new Islands(hurt));
        SentWhole = traffic.TotalGigabits;
        var sending = new FabricTraffic(hurt, traffic);
        UnsentGigabits = sending.Unsent;
        CutOff = [.. Cut(intact)];
        Stranded = [.. Flows(sending)];
    }

    /// <summary>What hosts send while all works, in Gb/s.</summary>
    public double SentWhole { get; }

    /// <summary>What is not sent, in Gb/s: by or to hosts that are down, or by hosts whose links left carry no more.</summary>
    public double UnsentGigabits { get; }

    /// <summary>Hosts that are up and cut off by what is down, by bundle.</summary>
    public ImmutableArray<CutBundle> CutOff { get; }

    /// <summary>What is sent and finds no way, most first.</summary>
    public ImmutableArray<StrandedFlow> Stranded { get; }

    /// <summary>Looks at a demand with something down; null without traffic.</summary>
    /// <param name="study">The demand.</param>
    /// <param name="outage">All that is down.</param>
    public static DamageCauses? Of(DemandStudy study, Outage outage)
    {
        var inside = study.Fabric.Map.Inside;
        return study.Traffic is { } traffic ? new DamageCauses(inside, inside.Without(outage), traffic) : null;
    }

    /// <summary>Hosts that were cut off before are not cut off by what is down.</summary>
    private IEnumerable<CutBundle> Cut(FabricGraph intact)
    {
        var before = whole.Cut(whole).ToDictionary(n => n, n => intact.Nodes[n].Members);
        foreach (var bundle in left.Cut(whole).GroupBy(hurt.OriginOfNode).OrderBy(g => g.Key))
        {
            var hosts = bundle.Sum(n => hurt.Nodes[n].Members) - before.GetValueOrDefault(bundle.Key);
            if (hosts > 0) yield return new CutBundle(bundle.Key, hosts, LinksLeft([.. bundle]));
        }
    }

    private int LinksLeft(HashSet<int> parts) => hurt.Links
        .Where(l => parts.Contains(l.A) || parts.Contains(l.B))
        .Where(l => !hurt.IsDown(l.A) && !hurt.IsDown(l.B))
        .Sum(l => l.Count);

    private IEnumerable<StrandedFlow> Flows(FabricTraffic sending)
    {
        var byPair = new Dictionary<(int From, int To), double>();
        var (column, scratch) = (new double[sending.Ends.Length], new double[hurt.OriginCount]);
        foreach (var to in sending.Ends.Where(sending.Reaches))
        {
            sending.Column(to, column, scratch);
            for (var i = 0; i < column.Length; i++)
            {
                var from = sending.Ends[i];
                if (column[i] <= 0 || left.AreJoined(from, to)) continue;
                var pair = (hurt.OriginOfNode(from), hurt.OriginOfNode(to));
                byPair[pair] = byPair.GetValueOrDefault(pair) + column[i];
            }
        }
        return byPair.Select(p => new StrandedFlow(p.Key.From, p.Key.To, p.Value))
            .OrderByDescending(f => Math.Round(f.Gigabits, DemandStudy.Places)).ThenBy(f => f.From).ThenBy(f => f.To);
    }
}
