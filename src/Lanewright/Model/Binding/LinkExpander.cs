using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Lanewright.Findings;
using Lanewright.Model.Devices;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>Makes links out of statements: pairs devices and gives out ports.</summary>
internal sealed class LinkExpander
{
    private const long MostLinks = 2_000_000;

    private readonly DeviceTable devices;
    private readonly FindingSink findings;
    private readonly PortAllotment allotment;
    private readonly LinkPairs pairs;
    private readonly Dictionary<int, string> nameOf = [];
    private readonly List<int> statementOf = [];
    private readonly List<int> fromDevice = [];
    private readonly List<int> toDevice = [];
    private readonly List<PortPlace> fromPort = [];
    private readonly List<PortPlace> toPort = [];

    /// <summary>Pairs of the set of links at hand.</summary>
    private readonly List<(int From, int To)> joined = [];

    public LinkExpander(DeviceTable devices, FindingSink findings)
    {
        this.devices = devices;
        this.findings = findings;
        allotment = new PortAllotment(devices, findings);
        pairs = new LinkPairs(devices);
    }

    /// <summary>All links of the statements that fit.</summary>
    /// <param name="statements">Sets of links.</param>
    /// <param name="lines">Lines, whose modules take ports as well.</param>
    public (LinkTable Links, ImmutableArray<LinePort> Ports) Expand(
        ImmutableArray<LinkStatement> statements, ImmutableArray<LineStatement> lines)
    {
        var ofLines = new LinePortExpander(allotment, 2 * statements.Length);
        ofLines.Reserve(lines, nameOf);
        foreach (var statement in statements)
        {
            allotment.Reserve(statement.From, DemandId(statement, isFrom: true));
            allotment.Reserve(statement.To, DemandId(statement, isFrom: false));
        }
        long[] most = [.. statements.Select(pairs.CountUpTo)];
        MakeRoom(most);
        for (var i = 0; i < statements.Length; i++)
        {
            var statement = statements[i];
            nameOf[DemandId(statement, isFrom: true)] = nameOf[DemandId(statement, isFrom: false)] = statement.Name;
            if (!Check(statement, most[i])) continue;
            Expand(statement);
        }
        var ports = ofLines.Expand(lines, ReportShort);
        CheckCeilings();
        return (new LinkTable([.. statementOf], [.. fromDevice], [.. fromPort], [.. toDevice], [.. toPort]), ports);
    }

    private static int DemandId(LinkStatement statement, bool isFrom) => (statement.Index * 2) + (isFrom ? 0 : 1);

    /// <summary>Columns that need not grow while they are filled.</summary>
    private void MakeRoom(long[] most)
    {
        var room = (int)Math.Min(MostLinks, most.Sum(m => Math.Min(m, MostLinks)));
        statementOf.EnsureCapacity(room);
        fromDevice.EnsureCapacity(room);
        toDevice.EnsureCapacity(room);
        fromPort.EnsureCapacity(room);
        toPort.EnsureCapacity(room);
    }

    private bool Check(LinkStatement statement, long most)
    {
        var from = statement.From.Devices;
        var to = statement.To.Devices;
        if (statement.Pattern == LinkPattern.Paired && from.Length != to.Length)
        {
            findings.Add(ModelFindings.CountsDiffer, statement.Span,
                $"paired needs as many devices on both sides: there are {from.Length} and {to.Length}; "
                + "use striped, or name parts of the groups");
        }
        if (statement.Pattern == LinkPattern.InRuns && LinkRuns.OfFrom(statement) != LinkRuns.OfTo(statement))
        {
            findings.Add(ModelFindings.CountsDiffer, statement.Span,
                $"in-runs needs as many runs on both sides: {from.Length} devices make {LinkRuns.OfFrom(statement)} "
                + $"and {to.Length} make {LinkRuns.OfTo(statement)}; change from-run or to-run, or leave from-run out to spread evenly");
        }
        var isBounded = statementOf.Count + most <= MostLinks;
        if (!isBounded)
            findings.Add(ModelFindings.PlanOutOfBounds, statement.Span,
                $"with '{statement.Name}' the plan has more than {MostLinks} links");
        return isBounded;
    }

    private void Expand(LinkStatement statement)
    {
        var fromLinks = new Dictionary<int, int>(statement.From.Devices.Length);
        var toLinks = new Dictionary<int, int>(statement.To.Devices.Length);
        joined.Clear();
        pairs.ForEach(statement, (a, b) => joined.Add((a, b)));
        var toItself = joined.RemoveAll(p => p.From == p.To) > 0;
        foreach (var (a, b) in joined)
        {
            CountUp(fromLinks, a);
            CountUp(toLinks, b);
        }
        if (toItself)
            findings.Add(ModelFindings.LinkToItself, statement.Span,
                $"'{statement.Name}' links a device to itself, which is left out; "
                + "name two devices, or write the same group on both sides with each-to-each for a mesh");
        if (fromLinks.Count == 0)
        {
            if (toItself) return;
            findings.Add(ModelFindings.PatternEmpty, statement.Span,
                $"'{statement.Name}' joins nothing: " + (statement.Pattern is LinkPattern.SameRack or LinkPattern.SameRow
                    ? "no device of one side stands with one of the other; "
                        + "place both groups in the same racks or rows, or choose another pattern"
                    : "both sides are the same single device; name two devices"));
            return;
        }
        var from = Demand(statement, statement.From, statement.To, isFrom: true, fromLinks);
        var to = Demand(statement, statement.To, statement.From, isFrom: false, toLinks);
        var shortFrom = new Dictionary<int, int>();
        var shortTo = new Dictionary<int, int>();
        foreach (var (a, b) in joined)
        {
            var portA = allotment.Take(a, from);
            var portB = allotment.Take(b, to);
            if (portA is null) CountUp(shortFrom, a);
            if (portB is null) CountUp(shortTo, b);
            if (portA is null || portB is null) continue;
            statementOf.Add(statement.Index);
            fromDevice.Add(a);
            toDevice.Add(b);
            fromPort.Add(portA.Value);
            toPort.Add(portB.Value);
        }
        ReportShort(from, shortFrom, fromLinks);
        ReportShort(to, shortTo, toLinks);
    }

    private static void CountUp(Dictionary<int, int> counts, int device) =>
        CollectionsMarshal.GetValueRefOrAddDefault(counts, device, out _)++;

    private EndDemand Demand(LinkStatement statement, LinkEnd end, LinkEnd far, bool isFrom, Dictionary<int, int> links)
    {
        var id = DemandId(statement, isFrom);
        var (mode, isListed) = end.UsesAdapter
            ? (new Catalogues.PortMode(1, statement.Rate), false)
            : BreakoutChoice.Of(statement, end, links, (device, m, least) => allotment.HasFreeCages(device, m, least, end, id));
        var demand = new EndDemand(id, statement.Name, end, mode, isListed, FormFactorsOf(far, statement.Rate));
        allotment.Begin(demand);
        return demand;
    }

    /// <summary>Form factors of the cages of a side that list ports of a rate.</summary>
    internal static HashSet<string> FormFactorsOf(LinkEnd end, BitRate rate) =>
        [.. end.Groups
            .SelectMany(g => g.Layout.Slots)
            .Select(s => s.Cage)
            .Where(c => c.Modes.Any(m => m.Rate == rate))
            .Select(c => c.FormFactor.Name)];

    private void ReportShort(EndDemand demand, Dictionary<int, int> missing, Dictionary<int, int> links)
    {
        if (missing.Count == 0 || allotment.IsExplained(demand)) return;
        var worst = missing.OrderByDescending(m => m.Value).ThenBy(m => m.Key).First();
        var group = devices.Group(worst.Key);
        // A port that does not exist has been reported where it is named.
        if (demand.End.Ports is { } ports && ports.Numbers[^1] > group.Layout.Slots.Length) return;
        var held = allotment.Held(worst.Key, demand);
        var others = missing.Count > 1 ? $", and {missing.Count - 1} more devices likewise" : "";
        var cure = held is { } h ? $"port {h.Label} is held by '{nameOf[h.Holder]}'; name other ports, or move that link"
            : demand.End.Ports is null ? "split cages further, take a larger model, or free ports of other links"
            : demand.End.Ports.NamedTwice is { } twice ? $"port {Numerals.Whole(twice)} is named more than once; name another instead"
            : "name more ports, or split them further";
        var needs = links[worst.Key] == 1 ? "a port" : $"{links[worst.Key]} ports";
        var lacking = worst.Value == 1 ? "one is" : worst.Value + " are";
        findings.Add(new Finding(held is null ? ModelFindings.PortsExhausted : ModelFindings.PortTaken, Severity.Error, demand.End.Span,
            $"{devices.Name(worst.Key)} ({group.Model.Name}) needs {needs} {demand.Mode} for '{demand.Name}' "
            + $"and {lacking} missing{others}; {cure}")
        {
            Count = missing.Values.Sum(v => (long)v),
            Subject = devices.Name(worst.Key),
        });
    }

    private void CheckCeilings()
    {
        foreach (var group in devices.Groups)
        {
            foreach (var ceiling in group.Layout.Ceilings)
            {
                var worst = 0;
                var device = -1;
                for (var i = group.First; i < group.First + group.Count; i++)
                {
                    var opened = allotment.Ports(i, ceiling).Opened;
                    if (opened <= worst) continue;
                    worst = opened;
                    device = i;
                }
                if (worst <= ceiling.Most) continue;
                findings.Add(PortFindings.PortCeilingExceeded, group.Span,
                    $"{devices.Name(device)} has {Numerals.Whole(worst)} logical ports "
                    + $"and {group.Model.Name} can have {Numerals.Whole(ceiling.Most)} there; split fewer cages");
            }
        }
    }
}
