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
        var pieces = route.Answer.Design.Spans;
        var amplifiers = route.Answer.Design.Amplifiers.Where(a => a.IsBetween).ToList();
        var (at, end, span) = (0.0, route.Spans[0].Length.Kilometres, 0);
        for (var piece = 0; piece < pieces.Length - 1; piece++)
        {
            at += pieces[piece].Length.Kilometres;
            var isAtSite = Math.Abs(at - end) < Near;
            var site = isAtSite ? route.Sites[span + 1].Name : $"hut on {route.Spans[span].Name}";
            var (one, other) = (route.Spans[span].Name, route.Spans[isAtSite ? span + 1 : span].Name);
            if (isAtSite) end += route.Spans[++span].Length.Kilometres;
            var (coming, going) = (new LinePoint(site, -1, null, "span " + one), new LinePoint(site, -1, null, "span " + other));
            if (piece >= amplifiers.Count)
            {
                yield return (-1, coming, going);
                continue;
            }
            var amplifier = new LinePoint(site, -1, null, amplifiers[piece].Place);
            yield return (-1, coming, amplifier);
            yield return (-1, amplifier, going);
        }
    }

    /// <summary>Kilometres by which sums of lengths may differ.</summary>
    private const double Near = 1e-6;

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
