using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The ribbon of a link of modules and fibre.</summary>
internal sealed class FibreRibbon
{
    private const int MostMatedPairs = 4;
    private readonly Solution solution;
    private readonly LinkClass link;
    private readonly FibreSide near;
    private readonly FibreSide far;
    private readonly int ends;
    private readonly int nearPorts;

    private FibreRibbon(LinkWay way, FibreSide near, FibreSide far)
    {
        this.near = near;
        this.far = far;
        solution = way.Solution;
        link = way.Class;
        ends = link.Shape is FanShape.Single or FanShape.Straight ? 1 : way.Used;
        nearPorts = Math.Min(near.Runnings, way.Used);
    }

    /// <summary>Whether the catalogue has no cord for it, so that there is nothing to draw between the plugs.</summary>
    private bool IsUnmade => solution.Cable is CordModel { IsPlaceholder: true };

    /// <summary>Where a fan-out has its mated pairs cannot be told, so only a straight cable shows them.</summary>
    private int MatedPairs => ends == 1 && solution.Channel is { Connections: <= MostMatedPairs } channel ? channel.Connections : 0;

    /// <summary>The ribbon, or null when the way has no two optical modules.</summary>
    public static RibbonModel? Of(LinkWay way)
    {
        var solution = way.Solution;
        if (solution.FromModule is not { } a || solution.FromApplication is not { Optical: { } fromType } fromRuns) return null;
        if (solution.ToModule is not { } b || solution.ToApplication is not { Optical: { } toType } toRuns) return null;
        var from = new FibreSide(way.Class.From, a, fromRuns, fromType, solution.FromFec, "from");
        var to = new FibreSide(way.Class.To, b, toRuns, toType, solution.ToFec, "to");
        var isTurned = way.Class.Shape == FanShape.ToEnd;
        return (isTurned ? new FibreRibbon(way, to, from) : new FibreRibbon(way, from, to)).Build() with { IsTurned = isTurned };
    }

    private RibbonModel Build()
    {
        var nearPlug = PlugLayout.OfOptics(near.Opening.Connector, near.Type, nearPorts, isFar: false);
        var farPlug = FarPlug();
        return new RibbonModel
        {
            Near = EndOf(near, "A", nearPorts, nearPlug),
            Far = [.. Enumerable.Range(0, ends).Select(i =>
                EndOf(far, RibbonWords.FarName(i, ends), FarPorts, farPlug))],
            Strands = [.. FibreStrands.Of(nearPlug, farPlug, ends, nearPorts, near.Type).Select(s => IsUnmade ? s with { Fibre = 0 } : s)],
            Heads = Heads(),
            Spans = Spans(),
            Notes = [.. FibreNotes.Of(link, solution, near, nearPlug, farPlug, ends, MatedPairs), .. Idle()],
            IsUnmade = IsUnmade,
            MatedPairs = MatedPairs,
            HasCouplers = solution.FarCord is not null,
            AttenuatesFar = Attenuates(far.Side),
            AttenuatesNear = Attenuates(near.Side),
        };
    }

    /// <summary>Ports of a far end that are shown.</summary>
    private int FarPorts => ends == 1 ? Math.Min(nearPorts, far.Runnings) : 1;

    /// <summary>What a split cage has beyond what is drawn.</summary>
    private IEnumerable<string> Idle()
    {
        if (link.Shape == FanShape.Single || near.Runnings <= nearPorts) yield break;
        yield return $"{Numerals.Whole(nearPorts)} of the {Numerals.Whole(near.Runnings)} ports of cage A have links; only those are drawn"
            + (solution.Cable is CordModel { Legs: var legs } && legs > nearPorts ? ", and the other legs of the fan-out hang free." : ".");
    }

    /// <summary>Where both cages are split and mixed, a far end has one port of its plug here and the others elsewhere.</summary>
    private PlugLayout FarPlug()
    {
        if (link.Shape != FanShape.BothEnds) return PlugLayout.OfOptics(far.Opening.Connector, far.Type, FarPorts, isFar: true);
        var (leaving, coming) = FibreLanes.Of(far.Type, 0, 0);
        var build = new PlugLayoutBuilder(isFar: true);
        build.Path(leaving, coming);
        return build.PairByPair(far.Opening.Connector);
    }

    private static RibbonEnd EndOf(FibreSide side, string name, int ports, PlugLayout plug) => new()
    {
        Name = name,
        // A single port of a split cage has its number all the same.
        Ports = side.Runnings > 1 && ports == 1 && name == "A" ? ["/1"] : RibbonWords.PortNames(ports),
        LanesPerPort = side.Runs.Host.Lanes,
        Body = EndBody.Module,
        Block = LaneBlock.Of(side.Module, side.Runs.Host, side.Type, side.Runnings),
        Plug = plug,
    };

    private RibbonHeads Heads()
    {
        var rate = link.Statement.Rate;
        return new RibbonHeads(
            RibbonWords.Port("Port A", near.Spec, rate, near.Fec, solution.Autonegotiates),
            ModuleWords("Module A", near),
            RibbonWords.Cable(solution, link.Statement.IsExisting, CableWords()),
            ModuleWords(RibbonWords.Heading("Module", "Modules", ends), far),
            RibbonWords.Port(RibbonWords.Heading("Port", "Ports", ends), far.Spec, rate, far.Fec, solution.Autonegotiates));
    }

    private static ImmutableArray<string> ModuleWords(string heading, FibreSide side) =>
        [heading, side.Module.Name, side.Module.Title, $"{side.Module.FormFactor.Name}, at most {side.Module.Power}", "wavelengths in nm"];

    private IEnumerable<string> CableWords()
    {
        if (solution.Cable is CordModel { IsPlaceholder: false } cord) yield return Connectors(cord);
        if (solution.FarCord is { } other) yield return "then " + other.Name;
        if (ends > 1 && solution.LinksPerCable == 1 && !IsUnmade) yield return "one cord for each port";
        var channel = solution.Channel;
        if (channel is { Connections: > 0 } or { Splices: > 0 })
        {
            var pairs = channel.Connections == 1 ? "1 mated pair" : Numerals.Whole(channel.Connections) + " mated pairs";
            var splices = channel.Splices == 1 ? "1 splice" : Numerals.Whole(channel.Splices) + " splices";
            yield return (channel.Splices == 0 ? pairs : channel.Connections == 0 ? splices : $"{pairs}, {splices}") + " on the way";
        }
        if (channel is { } c && c.Attenuator > default(Decibels))
            yield return $"{c.Attenuator} attenuator" + (solution.Attenuator is null ? " in the channel" : " before the receiver");
    }

    private static string Connectors(CordModel cord)
    {
        var legs = cord.Legs > 1 ? Numerals.Whole(cord.Legs) + " x " : "";
        return $"{cord.Near} {cord.PolishNear}".TrimEnd() + $" to {legs}{cord.Far} {cord.PolishFar}".TrimEnd();
    }

    private ImmutableArray<Span> Spans()
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        spans.Add(new Span(0, Stop.NearPort, Stop.NearBlock, HostWords(near, nearPorts)));
        spans.Add(new Span(0, Stop.NearPlug, Stop.FarPlug, $"{solution.MediumName}, {solution.Length}"));
        spans.Add(new Span(0, Stop.FarBlock, Stop.FarPort, (ends > 1 ? "each " : "") + HostWords(far, FarPorts)));
        spans.Add(new Span(1, Stop.NearMedia, Stop.FarMedia, MediaWords()));
        var (nearCode, farCode) = (CodeOf(near), CodeOf(far));
        var nearStop = near.Module.HasOwnFec ? Stop.NearBlock : Stop.NearPort;
        var farStop = far.Module.HasOwnFec ? Stop.FarBlock : Stop.FarPort;
        spans.Add(RibbonWords.Code(2, nearCode, nearStop, farCode, farStop));
        var inner = near.Type.Fec.IndexOf('+', StringComparison.Ordinal);
        if (inner >= 0 && !near.Module.HasOwnFec)
            spans.Add(new Span(3, Stop.NearBlock, Stop.FarBlock, $"{near.Type.Fec[(inner + 1)..]} code: added and ended in the modules"));
        return spans.ToImmutable();
    }

    private static string HostWords(FibreSide side, int ports) =>
        RibbonWords.Host(ports, side.Runs.Host.Name, side.Runs.Host.Lanes, side.Runs.Host.Signal);

    private string MediaWords()
    {
        var ports = nearPorts;
        if (near.Type.Name == far.Type.Name) return Media(near.Type, ports);
        if (near.Type.MediaLanes == far.Type.MediaLanes && near.Type.Signal == far.Type.Signal)
            return $"{RibbonWords.Times(ports, near.Type.Name)} at A, {far.Type.Name} at B: "
                + $"{RibbonWords.Lanes(near.Type.MediaLanes * ports)}, {RibbonWords.Signal(near.Type.Signal)}";
        return $"A: {Media(near.Type, ports)}; B: {Media(far.Type, 1)}";
    }

    private static string Media(InterfaceType type, int ports) =>
        $"{RibbonWords.Times(ports, type.Name)}: {RibbonWords.Lanes(type.MediaLanes * ports)}, {RibbonWords.Signal(type.Signal)}";

    /// <summary>The code of the whole link as one end makes it.</summary>
    private static string CodeOf(FibreSide side) => side.Module.HasOwnFec ? side.Type.Fec : side.Fec;

    private bool Attenuates(string receiver)
    {
        if (solution.Attenuator is not { } part) return false;
        var receivers = solution.Parts.Where(p => ReferenceEquals(p.Item, part)).Sum(p => p.Quantity);
        return receivers != 1 || solution.Checks.Any(c => c.Name == CheckNames.Overload && c.End == receiver);
    }
}
