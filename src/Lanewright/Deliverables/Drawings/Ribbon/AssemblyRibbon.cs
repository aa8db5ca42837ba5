using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The ribbon of a cable that has its ends on: passive copper, active copper, or light inside.</summary>
internal sealed class AssemblyRibbon
{
    private readonly LinkClass link;
    private readonly Solution solution;
    private readonly AssemblyModel cable;
    private readonly EndSpec near;
    private readonly EndSpec far;
    private readonly bool isTurned;
    private readonly int ends;
    private readonly int nearPorts;
    private readonly int used;

    private AssemblyRibbon(LinkWay way, AssemblyModel cable)
    {
        link = way.Class;
        solution = way.Solution;
        used = way.Used;
        this.cable = cable;
        isTurned = link.Shape == FanShape.ToEnd || (cable.Legs == 1 && !Takes(link.From, cable.Near) && Takes(link.To, cable.Near));
        (near, far) = isTurned ? (link.To, link.From) : (link.From, link.To);
        ends = Math.Max(1, cable.Legs);
        nearPorts = ends > 1 ? ends : Math.Max(1, near.Ways);
    }

    /// <summary>Lanes each leg shows at the near end and at its far end.</summary>
    private (int Near, int Far) LegLanes => cable.Type is { } type
        ? (type.Lanes, type.Lanes)
        : (cable.NearInterface?.Lanes ?? 1, cable.FarInterface?.Lanes ?? 1);

    /// <summary>The ribbon, or null when the way has no such cable.</summary>
    public static RibbonModel? Of(LinkWay way) => way.Solution.Cable is AssemblyModel cable ? new AssemblyRibbon(way, cable).Build() : null;

    private static bool Takes(EndSpec end, FormFactor plug) => end.Cage.FormFactor.Accepts.Contains(plug.Name);

    private RibbonModel Build()
    {
        var (nearLanes, farLanes) = LegLanes;
        // A cable that changes the number of lanes carries them as its maker likes.
        var isOneForOne = nearLanes == farLanes;
        var farPorts = ends > 1 ? 1 : nearPorts;
        var nearPlug = PlugLayout.OfCable(nearPorts, isOneForOne ? PerPort(nearLanes) : 1, isFar: false);
        var farPlug = PlugLayout.OfCable(farPorts, isOneForOne ? PerPort(farLanes) : 1, isFar: true);
        return new RibbonModel
        {
            Near = EndOf("A", RibbonWords.PortNames(nearPorts), PerPort(nearLanes), nearPlug),
            Far = [.. Enumerable.Range(0, ends).Select(i =>
                EndOf(RibbonWords.FarName(i, ends), RibbonWords.PortNames(farPorts), PerPort(farLanes), farPlug))],
            Strands = Strands(nearPlug, farPlug),
            Heads = Heads(),
            IsTurned = isTurned,
            Spans = [.. Spans(nearLanes, farLanes)],
            Notes = [.. Notes(isOneForOne)],
        };
    }

    /// <summary>A straight cable between cages split alike deals its lanes out to their ports.</summary>
    private int PerPort(int lanes) => ends > 1 ? lanes : Math.Max(1, lanes / nearPorts);

    private RibbonEnd EndOf(string name, ImmutableArray<string> ports, int lanesPerPort, PlugLayout plug) => new()
    {
        Name = name,
        Ports = ports,
        LanesPerPort = lanesPerPort,
        Body = cable.Medium switch
        {
            CableMedium.Dac => EndBody.PassiveEnd,
            CableMedium.Aec => EndBody.ActiveCopperEnd,
            _ => EndBody.ActiveOpticalEnd,
        },
        Block = cable.Medium == CableMedium.Aec ? new LaneBlock("retimer", "") : null,
        Plug = plug,
    };

    private ImmutableArray<Strand> Strands(PlugLayout nearPlug, PlugLayout farPlug)
    {
        var kind = cable.Medium == CableMedium.Aoc ? StrandKind.Light : StrandKind.Pair;
        var strands = ImmutableArray.CreateBuilder<Strand>();
        var perEnd = farPlug.Sends.Length;
        for (var path = 0; path < nearPlug.Sends.Length; path++)
        {
            var (end, farPath) = (path / perEnd, path % perEnd);
            if (end >= ends) continue;
            strands.Add(new Strand(nearPlug.Sends[path], end, farPlug.Hears[farPath], StrandWay.Forth, kind));
            strands.Add(new Strand(nearPlug.Hears[path], end, farPlug.Sends[farPath], StrandWay.Back, kind));
        }
        return strands.ToImmutable();
    }

    private RibbonHeads Heads()
    {
        var rate = link.Statement.Rate;
        var (nearFec, farFec) = isTurned ? (solution.ToFec, solution.FromFec) : (solution.FromFec, solution.ToFec);
        return new RibbonHeads(
            RibbonWords.Port("Port A", near, rate, nearFec, solution.Autonegotiates),
            EndWords("Cable end A", cable.Near, cable.NearPower),
            RibbonWords.Cable(solution, link.Statement.IsExisting, [CableWords()]),
            EndWords(RibbonWords.Heading("Cable end", "Cable ends", ends), cable.Far, cable.FarPower),
            RibbonWords.Port(RibbonWords.Heading("Port", "Ports", ends), far, rate, farFec, solution.Autonegotiates));
    }

    private static ImmutableArray<string> EndWords(string heading, FormFactor plug, Watts power) =>
        [heading, plug.Name + " end", $"at most {power}"];

    private string CableWords() => cable.Medium switch
    {
        CableMedium.Dac => $"passive copper, {Wire()}",
        CableMedium.Aec => $"active copper, {Wire()}",
        _ => "active optical: light inside",
    };

    private string Wire() => cable.Gauge > 0 ? Numerals.Whole(cable.Gauge) + " AWG" : "gauge not stated";

    private IEnumerable<Span> Spans(int nearLanes, int farLanes)
    {
        yield return new Span(0, Stop.NearPlug, Stop.FarPlug, $"{solution.MediumName}, {solution.Length}"
            + (cable.Medium == CableMedium.Aoc ? "" : ", " + Wire()));
        var legs = Math.Max(1, cable.Legs);
        if (cable.Type is { } type)
        {
            yield return new Span(1, Stop.NearPort, Stop.FarPort,
                $"{RibbonWords.Times(legs, type.Name)}: {RibbonWords.Lanes(nearLanes * legs)}, {RibbonWords.Signal(type.Signal)}");
        }
        else if (cable.NearInterface is { } a && cable.FarInterface is { } b)
        {
            yield return new Span(0, Stop.NearPort, Stop.NearMedia, RibbonWords.Host(legs, a.Name, a.Lanes, a.Signal));
            yield return new Span(0, Stop.FarMedia, Stop.FarPort, (legs > 1 ? "each " : "")
                + RibbonWords.Host(1, b.Name, b.Lanes, b.Signal));
        }
        var (nearFec, farFec) = isTurned ? (solution.ToFec, solution.FromFec) : (solution.FromFec, solution.ToFec);
        yield return RibbonWords.Code(2, nearFec, Stop.NearPort, farFec, Stop.FarPort);
    }

    private IEnumerable<string> Notes(bool isOneForOne)
    {
        if (ends > 1) yield return "Port /1 of the split cage leads to B1, /2 to B2 and so on. All far ends are drawn alike.";
        if (ends > used) yield return $"{Numerals.Whole(used)} of the {Numerals.Whole(ends)} legs have links; the others hang free.";
        if (ends == 1 && nearPorts > 1) yield return "Both cages are split alike: port /1 of A meets port /1 of B and so on.";
        if (cable.Medium == CableMedium.Dac)
        {
            yield return "Each line is one pair of conductors. Nothing in the cable works on the signal: the ports equalise it.";
            yield break;
        }
        yield return isOneForOne
            ? "Lanes inside the cable are drawn one for one; how the maker carries them is not known here."
            : "The two ends have different numbers of lanes; how the maker carries them in the cable is not known here, so each direction "
            + "is one line.";
        yield return cable.Medium == CableMedium.Aec
            ? "Each line is one pair of conductors. The retimers at both ends draw power and make the signal anew."
            : "The light stays inside the cable: there is no plug to open or clean. Laser light is invisible: never look into "
            + "the end of a cut or broken cable. Local rules prevail.";
    }
}
