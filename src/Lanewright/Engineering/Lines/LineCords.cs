using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Lines;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>The cords of all lines whose ports the plan names.</summary>
internal sealed class LineCords
{
    private const string Glass = "OS2";

    private readonly Plan plan;
    private readonly RouteLength ways;
    private readonly CordModel? cord;
    private readonly ILookup<(int, int), LinePort> ports;

    private LineCords(Plan plan)
    {
        this.plan = plan;
        ways = new RouteLength(plan);
        cord = CordMatch.Find(plan.Standards, plan.Catalogue.Cords, Glass, ModuleOpening.Duplex, ModuleOpening.Duplex, 1);
        ports = plan.LinePorts.ToLookup(p => (p.Line, p.Route));
    }

    /// <summary>The cords, line by line and route by route: those of the first site, of sites between, of the second.</summary>
    public static ImmutableArray<LineCord> Of(Plan plan, ImmutableArray<LineResult> lines)
    {
        if (plan.LinePorts.IsEmpty) return [];
        var cords = new LineCords(plan);
        return [.. lines.SelectMany(l => l.Routes.SelectMany((r, i) => cords.Of(l.Statement, r, i)))];
    }

    private IEnumerable<LineCord> Of(LineStatement line, LineRoute route, int index)
    {
        var here = ports[(line.Index, index)].ToList();
        if (here.Count == 0) return [];
        var first = End(route, line.From.Name, route.Spans[0].Name,
            LineShelves.At(line.FromShelves, index), LineShelves.At(line.FromPanels, index),
            here.Select(p => (p.Channel, new LinePoint(line.From.Name, p.FromDevice, p.FromPort, ""))));
        var last = End(route, line.To.Name, route.Spans[^1].Name,
            LineShelves.At(line.ToShelves, index), LineShelves.At(line.ToPanels, index),
            here.Select(p => (p.Channel, new LinePoint(line.To.Name, p.ToDevice, p.ToPort, ""))));
        return first.Concat(Between(route)).Concat(last)
            .Select((c, number) => Made(line, index, number + 1, c.Channel, c.From, c.To));
    }

    /// <summary>One end: each module to the multiplexer, that to the amplifiers, and what is last to the panel.</summary>
    private static IEnumerable<(int Channel, LinePoint From, LinePoint To)> End(
        LineRoute route, string site, string span, int shelf, int panel, IEnumerable<(int Channel, LinePoint Port)> modules)
    {
        var design = route.Answer.Design;
        var outside = new LinePoint(site, panel, null, "span " + span);
        var amplifies = design.Amplifiers.Any(a => !a.IsBetween);
        var amplifiers = new LinePoint(site, shelf, null, "amplifiers");
        if (!design.Multiplexes)
        {
            foreach (var (channel, port) in modules)
            {
                yield return (channel, port, amplifies ? amplifiers : outside);
                if (amplifies) yield return (channel, amplifiers, outside);
            }
            yield break;
        }
        foreach (var (channel, port) in modules)
            yield return (channel, port, new LinePoint(site, shelf, null, $"multiplexer {Numerals.Whole(channel + 1)}"));
        var common = new LinePoint(site, shelf, null, "multiplexer line");
        if (amplifies) yield return (-1, common, amplifiers);
        yield return (-1, amplifies ? amplifiers : common, outside);
    }

    /// <summary>Where one span, or a piece of one, meets the next: through amplifiers, or from panel to panel.</summary>
    private static IEnumerable<(int Channel, LinePoint From, LinePoint To)> Between(LineRoute route)
    {
        foreach (var joint in LineJoint.Of(route))
        {
            var coming = new LinePoint(joint.Site, -1, null, "span " + joint.From);
            var going = new LinePoint(joint.Site, -1, null, "span " + joint.To);
            if (joint.GoesOn)
            {
                yield return (-1, coming, going);
                continue;
            }
            var amplifier = new LinePoint(joint.Site, -1, null, $"in-line {Numerals.Whole(joint.Amplifier)}");
            yield return (-1, coming, amplifier);
            yield return (-1, amplifier, going);
        }
    }

    private LineCord Made(LineStatement line, int route, int number, int channel, LinePoint from, LinePoint to)
    {
        var usual = plan.Standards.LineValue("cord", from.Device < 0 && to.Device < 0 ? "in-hut" : "in-shelf");
        var isInside = from.Device == to.Device && (from.Device >= 0 || (from.Site != line.From.Name && from.Site != line.To.Name));
        var way = isInside ? Length.FromMetres(usual.Value)
            : from.Device >= 0 && to.Device >= 0 ? ways.Between(from.Device, to.Device)
            : null;
        var needed = isInside ? way : way is { } known ? ways.WithSlack(known) : null;
        var ordered = needed is { } least ? cord?.OrderedFor(least) ?? least : (Length?)null;
        return new LineCord(line.Index, route, number, channel, from, to, cord, way, ordered);
    }
}
