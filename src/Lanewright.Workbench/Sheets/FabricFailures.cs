using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a page has taken down of a network. The address of the page holds it, a name each: a switch or a host by its own name, a
/// link by its identifier, anything else by its kind and name.</summary>
internal sealed class FabricFailures
{
    /// <summary>The key of an address.</summary>
    public const string Key = "down";

    private const int Most = 60;

    private readonly DemandStudy study;
    private readonly string address;
    private readonly Lazy<Dictionary<string, Outage>> known;
    private readonly Lazy<ImmutableArray<string>> names;
    private readonly ImmutableArray<string> named;
    private readonly Lazy<DamagedNetwork?> damage;
    private readonly Lazy<ILookup<int, int>> planLinks;

    /// <summary>Takes what an address names.</summary>
    /// <param name="study">The demand.</param>
    /// <param name="address">The address of the page with nothing down.</param>
    /// <param name="named">What is down.</param>
    public FabricFailures(DemandStudy study, string address, IEnumerable<string?> named)
    {
        (this.study, this.address) = (study, address);
        this.named = [.. named.OfType<string>().Distinct(StringComparer.Ordinal).Take(Most)];
        known = new(Known);
        names = new(Names);
        planLinks = new(() => PlanLinks().ToLookup(study.Fabric.Map.LinkOf));
        damage = new(() => DamagedNetwork.Of(study, Together()));
    }

    /// <summary>What is down.</summary>
    public IEnumerable<string> Down => named.Where(known.Value.ContainsKey);

    /// <summary>What the address names and the network does not have.</summary>
    public IEnumerable<string> Unknown => named.Where(n => !known.Value.ContainsKey(n));

    /// <summary>What that does; null without traffic, and where the ideal split is too large to solve.</summary>
    public DamagedNetwork? Damage => damage.Value;

    /// <summary>Where its losses come from; null without traffic.</summary>
    public DamageCauses? Causes => DamageCauses.Of(study, Together());

    /// <summary>The address with all that is down.</summary>
    public string Here => Address(named);

    /// <summary>What the address says of what is down, from its question mark on.</summary>
    public string Query => Here[address.Length..];

    /// <summary>How the drawing shows it.</summary>
    public FabricView View => new(named.IsEmpty ? null : Damage, study.Fabric.Map, OfBox, OfLine);

    /// <summary>The address with one thing more down, or with it up again.</summary>
    public string With(string name) =>
        Address(named.Contains(name) ? named.Remove(name) : named.Length < Most ? named.Add(name) : named);

    /// <summary>How one of all that may fail is named in an address.</summary>
    /// <param name="unit">Its number.</param>
    public string NameOf(int unit) => names.Value[unit];

    private Outage Together() => Down.Aggregate(Outage.None, (all, name) => all.With(known.Value[name]));

    private string Address(IEnumerable<string> down) =>
        string.Join('&', down.Select((n, i) => (i == 0 ? $"{address}?" : "") + $"{Key}={Uri.EscapeDataString(n)}")) is { Length: > 0 } all
            ? all
            : address;

    private string OfBox(PictureNode box)
    {
        var (map, devices) = (study.Fabric.Map, study.Fabric.Map.Plan.Devices);
        var names = box.Nodes.SelectMany(n => map.Devices(n)).Select(devices.Name).ToList();
        return With(names.Count == 1 ? names[0] : names.FirstOrDefault(n => !named.Contains(n), names[0]));
    }

    private string OfLine(PictureEdge line)
    {
        // One that still carries something comes first: of links to a switch that is down nothing is left to take.
        var links = line.FabricLinks.OrderByDescending(l => named.IsEmpty || Damage is not { } damage || damage.Left(l) > 0)
            .SelectMany(l => planLinks.Value[l]).Select(Identifiers.Link);
        return links.FirstOrDefault(n => !named.Contains(n)) is { } next ? With(next) : Address(named);
    }

    private IEnumerable<int> PlanLinks() =>
        Enumerable.Range(0, study.Fabric.Map.Plan.Links.Count).Where(l => study.Fabric.Map.LinkOf(l) >= 0);

    private Dictionary<string, Outage> Known()
    {
        var (map, all) = (study.Fabric.Map, new Dictionary<string, Outage>(StringComparer.Ordinal));
        for (var node = 0; node < map.Graph.Nodes.Length; node++)
        {
            if (!map.Graph.Nodes[node].IsTerminal) continue;
            foreach (var host in map.Devices(node))
                all.TryAdd(map.Plan.Devices.Name(host), new Outage([], [], [new MemberOutage(node, map.MemberOf(host), 1)]));
        }
        for (var unit = 0; unit < study.Fabric.Failures.Length; unit++) all.TryAdd(NameOf(unit), study.Fabric.Failures[unit].Outage);
        return all;
    }

    /// <summary>A switch is named by its own name, a link by its identifier, anything else by its kind and name.</summary>
    private ImmutableArray<string> Names()
    {
        // Units that are links come in the order of the plan's links.
        var links = PlanLinks().ToImmutableArray();
        var link = 0;
        return
        [
            .. study.Fabric.Failures.Select(unit => unit.Kind switch
            {
                FailureKind.Link => link < links.Length ? Identifiers.Link(links[link++]) : unit.Name,
                FailureKind.Switch => unit.Name,
                _ => LoadWords.Failure(unit),
            }),
        ];
    }
}
