using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Choice;

/// <summary>Puts a cord between two modules and holds the whole against every limit.</summary>
internal sealed class FibreJudge(FinderContext context)
{
    /// <summary>Connector of the legs where two fan-outs meet.</summary>
    private const string Coupled = "LC-duplex";

    private static readonly Citation Polishing = new("IEC 61754", "", "", Mark.Memory);

    private readonly PatchFinder patches = new(context);

    /// <summary>The link as solutions with their comparisons: one, and more where longer cords are in stock; none when its length
    /// cannot be told.</summary>
    public IEnumerable<Solution> Judge(LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, Fibre fibre)
    {
        if (link.Needed is not { } needed) return [];
        if (link.Through is { } way)
            return way.IsMeasured && link.FarNeeded is not null ? [Patched(link, from, to, media, fibre, way)] : [];
        var cords = Cords(link, from, to, fibre);
        var lengths = cords.Cord is { } cord ? context.LengthsFor(link, cord, ShortestLink(from, to)) : [needed];
        return lengths.Select(length => Judge(link, from, to, media, fibre, cords, length ?? needed));
    }

    private Solution Judge(
        LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, Fibre fibre, CordChoice cords, Length length)
    {
        var channel = ChannelOf(link, fibre, length, cords.ExtraConnections);
        var solution = Judge(link, from, to, media, cords, channel);
        return Attenuated(link, from, to, media, cords, solution);
    }

    /// <summary>The link with cords from its modules to the panels, and between panels where trunks stand in series.</summary>
    private Solution Patched(
        LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, Fibre fibre, TrunkWay way)
    {
        var plan = patches.Find(link, way, from.Opening, to.Opening, fibre.Name);
        var laid = way.Length ?? default;
        if (plan.Cords.IsEmpty)
        {
            foreach (var bridge in way.Bridges) laid += bridge ?? default;
            laid += (link.Needed ?? default) + (link.FarNeeded ?? default);
            var none = new CordChoice(null, null, 0, 1) { Problem = plan.Problem };
            return Judge(link, from, to, media, none, ChannelOf(link, fibre, laid, 0));
        }
        foreach (var cord in plan.Cords) laid += cord.Length;
        var cords = new CordChoice(plan.Cords[0].Cord, plan.Cords[^1].Cord, 0, plan.LinksPerCable)
        {
            NearLength = plan.Cords[0].Length,
            FarLength = plan.Cords[^1].Length,
            Patching = plan.Cords,
        };
        var channel = ChannelOf(link, fibre, laid, 0) with { Stretch = Measured(way) };
        return Attenuated(link, from, to, media, cords, Judge(link, from, to, media, cords, channel));
    }

    /// <summary>What was measured from panel to panel; cords and other trunks are computed beside it.</summary>
    private static MeasuredStretch? Measured(TrunkWay way)
    {
        var measured = way.Legs.Where(l => l.Trunk.MeasuredLoss is not null).ToList();
        if (measured.Count == 0) return null;
        var (loss, length) = (default(Decibels), default(Length));
        foreach (var leg in measured)
        {
            loss += leg.Trunk.MeasuredLoss ?? default;
            length += leg.Length ?? default;
        }
        return new MeasuredStretch(loss, length, measured.Sum(l => l.Trunk.Connections), measured.Sum(l => l.Trunk.Splices));
    }

    /// <summary>The link with the attenuator its statement asks for, or the one its receivers need.</summary>
    private Solution Attenuated(
        LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, CordChoice cords, Solution solution) =>
        link.Statement.Attenuator is { } stated
            ? Fitted(solution, Stated(stated), "", 2)
            : WithAttenuator(link, from, to, media, cords, solution) ?? solution;

    /// <summary>A cord may be longer than its way, so none is ordered that is too short for the types at its ends.</summary>
    private static Length ShortestLink(ModuleEnd from, ModuleEnd to)
    {
        var near = from.Type.LengthMin?.Value ?? default;
        var far = to.Type.LengthMin?.Value ?? default;
        return far > near ? far : near;
    }

    private Channel ChannelOf(LinkClass link, Fibre fibre, Length length, int extraConnections)
    {
        var statement = link.Statement;
        var policy = context.Policy;
        var usual = link.Through is { } way ? way.Connections
            : link.Joins?.ConnectionsWith(policy.ConnectionsBetweenHalls) ?? policy.ConnectionsInHall;
        return new Channel
        {
            Fibre = fibre,
            Length = length,
            Connections = (statement.Connections ?? usual) + extraConnections,
            ConnectionLoss = Stated(statement.ConnectionLoss, policy.ConnectionLoss),
            Splices = statement.Splices ?? link.Through?.Splices ?? link.Joins?.Splices ?? 0,
            SpliceLoss = Stated(statement.SpliceLoss, policy.SpliceLoss),
            Reflectance = statement.Reflectance is { } r ? new Known<Decibels>(r, Citation.OfPlan) : policy.Reflectance,
            Attenuation = statement.Attenuation is { } a ? new Known<Attenuation>(a, Citation.OfPlan) : null,
            AttenuationAt = statement.AttenuationAt,
            MeasuredLoss = statement.MeasuredLoss,
            Attenuator = statement.Attenuator ?? default,
            AgeingMargin = policy.AgeingMargin,
        };
    }

    private static Known<Decibels> Stated(Decibels? stated, Known<Decibels> usual) =>
        stated is { } value ? new Known<Decibels>(value, Citation.OfPlan) : usual;

    private CordChoice Cords(LinkClass link, ModuleEnd from, ModuleEnd to, Fibre fibre)
    {
        if (link.Statement.Cord is { } named) return new CordChoice(named, null, 0, PerCable(link, named.Legs));
        var all = context.Catalogue.Cords;
        var (near, far) = link.Shape == FanShape.ToEnd ? (to.Opening, from.Opening) : (from.Opening, to.Opening);
        // A module of several whole links has an opening for each, and each its own cord.
        if (link.Shape is FanShape.Single || near.Count > 1)
            return new CordChoice(CordMatch.Find(context.Standards, all, fibre.Name, near, far, 1), null, 0, 1);
        if (link.Shape == FanShape.Straight)
            return new CordChoice(CordMatch.Find(context.Standards, all, fibre.Name, near, far, 1), null, 0, link.From.Ways);
        if (link.Shape != FanShape.BothEnds)
            return new CordChoice(CordMatch.Find(context.Standards, all, fibre.Name, near, far, link.Legs), null, 0, link.Legs);
        return FanOutAtBothEnds(link, from, to, fibre);
    }

    /// <summary>Two fan-outs whose duplex legs meet in couplers: one more mated pair in the channel.</summary>
    private CordChoice FanOutAtBothEnds(LinkClass link, ModuleEnd from, ModuleEnd to, Fibre fibre)
    {
        var leg = new ModuleOpening(Coupled, "PC", 1);
        var near = CordMatch.Find(context.Standards, context.Catalogue.Cords, fibre.Name, from.Opening, leg, link.From.Ways);
        var far = CordMatch.Find(context.Standards, context.Catalogue.Cords, fibre.Name, to.Opening, leg, link.To.Ways);
        return near is null || far is null ? new CordChoice(null, null, 0, 1) : new CordChoice(near, far, 1, link.From.Ways);
    }

    private static int PerCable(LinkClass link, int legs) => legs > 1 ? legs : link.Shape == FanShape.Straight ? link.From.Ways : 1;

    private Solution Judge(LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, CordChoice cords, Channel channel)
    {
        var (fromType, toType) = (from.Type, to.Type);
        var fec = FecChecks.OfOptics(
            from.Use, FecSide.Of(fromType, from.Application.Host, from.Module.HasOwnFec),
            to.Use, FecSide.Of(toType, to.Application.Host, to.Module.HasOwnFec),
            fromType, toType);
        var latency = LinkLatency.OverFibre(context.Standards, channel.Fibre, channel.Length, fromType.Fec);
        var isDraft = fromType.IsDraft || toType.IsDraft;
        var isNamed = link.Statement.Type is not null || link.Statement.From.Module is not null || link.Statement.To.Module is not null;
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(from.Checks);
        checks.AddRange(to.Checks);
        checks.AddRange(media);
        checks.AddRange(fec.All);
        checks.AddRange(StartupChecks.WithoutNegotiation(from.Use, to.Use));
        checks.AddRange(CordChecks(link, from, to, cords, channel.Fibre));
        if (link.Through is { } trunks)
            checks.AddRange(WayChecks.Of(context.Standards, trunks, cords.Patching, Fibres(from, to), cords.LinksPerCable));
        checks.AddRange(FibreLinkChecks.Of(context.Standards, channel, fromType, toType, out var loss));
        checks.AddRange(Bends(link, cords.Cord));
        checks.AddRange(context.Common(link, channel.Fibre.Name, isDraft, isNamed, channel.Length, latency));
        var cable = cords.Cord ?? Missing(channel.Fibre);
        var adapters = context.Adapters((from.Use, from.Module.FormFactor), (to.Use, to.Module.FormFactor));
        return new Solution
        {
            Name = NameOf(from, to, cable, cords, channel) + (link.Through is { } way ? $" through {way.Name}" : ""),
            Medium = CableMedium.Fibre,
            MediumName = channel.Fibre.Name,
            TypeName = TypeNames(from.Application, to.Application),
            FromModule = from.Module,
            FromApplication = from.Application,
            ToModule = to.Module,
            ToApplication = to.Application,
            Cable = cable,
            FarCord = cords.FarCord,
            FarLength = cords.FarLength,
            Through = link.Through,
            Patching = cords.Patching,
            Adapters = adapters,
            Length = cords.NearLength ?? channel.Length,
            Channel = channel,
            Loss = loss,
            Checks = checks.ToImmutable(),
            Parts = FinderContext.WithoutExisting(
                link.Statement, [.. Parts(link, from, to, cords, channel), .. FinderContext.Uses(adapters)]),
            FromFec = fec.FromPort,
            ToFec = fec.ToPort,
            Latency = latency,
            LinksPerCable = cords.LinksPerCable,
            Power = Watts.From((from.Module.Power.Value / link.From.Ways) + (to.Module.Power.Value / link.To.Ways)),
        };
    }

    private static int Fibres(ModuleEnd from, ModuleEnd to) =>
        Math.Max(WayCords.FibresOf(from.Module, from.Application), WayCords.FibresOf(to.Module, to.Application));

    private static string NameOf(ModuleEnd from, ModuleEnd to, CordModel cable, CordChoice cords, Channel channel)
    {
        var modules = from.Module == to.Module ? "2 x " + from.Module.Name : from.Module.Name + " + " + to.Module.Name;
        if (cable.IsPlaceholder) return $"{modules}, {cable.Name}";
        var far = cords.Patching.IsEmpty
            ? cords is { FarCord: { } other, FarLength: { } length } ? $" and {other.Name} {length}" : ""
            : string.Concat(cords.Patching.Skip(1).Select(p => $" and {p.Cord.Name} {p.Length}"));
        return $"{modules}, {cable.Name} {cords.NearLength ?? channel.Length}{far}";
    }

    private static string TypeNames(Application from, Application to) =>
        from.MediaName == to.MediaName ? from.MediaName : from.MediaName + " / " + to.MediaName;

    private static CordModel Missing(Fibre fibre) => new()
    {
        Name = "no cord",
        Title = "no cord in the catalogue",
        Fibre = fibre.Name,
        Near = "",
        Far = "",
        Lengths = [],
    };

    private static IEnumerable<PartUse> Parts(LinkClass link, ModuleEnd from, ModuleEnd to, CordChoice cords, Channel channel)
    {
        yield return new PartUse(from.Module, null, link.From.Ways);
        yield return new PartUse(to.Module, null, link.To.Ways);
        foreach (var patch in cords.Patching) yield return new PartUse(patch.Cord, patch.Length, patch.Links);
        if (!cords.Patching.IsEmpty) yield break;
        if (cords.Cord is { } cord) yield return new PartUse(cord, cords.NearLength ?? channel.Length, cords.LinksPerCable);
        if (cords.FarCord is { } far) yield return new PartUse(far, cords.FarLength ?? channel.Length, link.To.Ways);
    }

    private IEnumerable<Check> CordChecks(LinkClass link, ModuleEnd from, ModuleEnd to, CordChoice cords, Fibre fibre)
    {
        var (near, far) = link.Shape == FanShape.ToEnd ? (to.Opening, from.Opening) : (from.Opening, to.Opening);
        if (cords.Problem is { } problem)
        {
            yield return problem;
            yield break;
        }
        if (cords.Cord is not { } cord)
        {
            var isMixed = link.Shape == FanShape.BothEnds;
            var missing = isMixed
                ? $"the parts of split cages are mixed and the catalogue lacks {fibre.Name} fan-outs from {FanOuts(link, near, far)}"
                : $"no {fibre.Name} cord in the catalogue joins {near} and {link.Legs} x {far}";
            yield return Check.Of(isMixed ? CheckNames.FanOut : CheckNames.Connector, false, CatalogueFacts.WhatIsLacking, missing);
            yield break;
        }
        if (fibre.Kind != from.Type.FibreKind)
            yield return Check.Of(CheckNames.FibreKind, false, from.Type.Definition,
                $"{cord.Name} is {fibre.Name} and {from.Application.MediaName} does not run on it");
        if (cords.FarCord is not null)
        {
            yield return Check.Of(CheckNames.Connector, true, CatalogueFacts.SourceOf(cord));
            yield break;
        }
        if (link.Statement.Cord is not null) yield return Legs(link, cord, near);
        var fits = CordMatch.ConnectorsFit(cord, near, far);
        yield return Check.Of(CheckNames.Connector, fits, CatalogueFacts.SourceOf(cord),
            fits ? "" : $"{cord.Name} ends in {cord.Near} and {cord.Far}; the modules show {near.Connector} and {far.Connector}");
        if (!fits) yield break;
        var polished = CordMatch.Fits(cord, near, far);
        var note = polished
            ? ""
            : $"{cord.Name} is polished {cord.PolishNear} and {cord.PolishFar}; the modules are {near.Polish} and {far.Polish}: "
                + "angled and flat ends must never mate";
        yield return Check.Of(CheckNames.Polish, polished, Polishing, note);
        if (context.Standards.Connector(near.Connector)?["module-pins"] is not { } pins) yield break;
        var unfit = CordMatch.UnfitPins(context.Standards, cord);
        yield return Check.Of(CheckNames.Pins, unfit.Length == 0, pins.Source, unfit.Length == 0 ? "" : $"{cord.Name}: {unfit}");
    }

    /// <summary>A named cord has to branch as the cages are split. A module of several whole links has a straight cord for
    /// each.</summary>
    private static Check Legs(LinkClass link, CordModel cord, ModuleOpening near)
    {
        if (link.Shape == FanShape.BothEnds)
        {
            const string mixed = "both cages are split and their parts are mixed: no one cord is made for that";
            return Check.Of(CheckNames.FanOut, false, CatalogueFacts.SourceOf(cord), mixed);
        }
        var legs = near.Count > 1 ? 1 : link.Legs;
        return Check.Of(CheckNames.FanOut, cord.Legs == legs, CatalogueFacts.SourceOf(cord),
            cord.Legs == legs ? "" : $"{cord.Name} has {Count(cord.Legs)} and the link needs {Count(legs)}");
    }

    private static string FanOuts(LinkClass link, ModuleOpening near, ModuleOpening far) => string.Join(" or ", new[]
    {
        $"{near} to {link.From.Ways} x {Coupled}",
        $"{far} to {link.To.Ways} x {Coupled}",
    }.Distinct());

    private static string Count(int legs) => legs == 1 ? "1 leg" : $"{legs} legs";

    private IEnumerable<Check> Bends(LinkClass link, CordModel? cord)
    {
        if (cord is null) yield break;
        if (link.FromRack is { } from) yield return BendSpace.OfCord(context.Standards, cord, from, "from");
        if (link.ToRack is { } to && to != link.FromRack) yield return BendSpace.OfCord(context.Standards, cord, to, "to");
    }

    /// <summary>Comparisons that no attenuator, length or setting would ever cure: what fails one of them gets no small parts.</summary>
    private static readonly ImmutableHashSet<string> Hopeless =
    [
        CheckNames.ModuleFit, CheckNames.PortMode, CheckNames.HostInterface, CheckNames.SharedFibre, CheckNames.FibreKind,
        CheckNames.MediaLanes, CheckNames.LaneBaud, CheckNames.LaneModulation, CheckNames.WavelengthPlan, CheckNames.Connector,
        CheckNames.FanOut,
    ];

    /// <summary>An overloaded receiver behind a duplex connector is cured by the smallest attenuator that suffices.</summary>
    private Solution? WithAttenuator(
        LinkClass link, ModuleEnd from, ModuleEnd to, ImmutableArray<Check> media, CordChoice cords, Solution solution)
    {
        var overload = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.Overload && c.Verdict == Verdict.Fail);
        if (overload?.Margin is not { } margin || link.Statement.Attenuator is not null || solution.Channel is not { } channel) return null;
        if (channel.Fibre.Kind != FibreKind.SingleMode) return null;
        if (solution.Checks.Any(c => c.Verdict == Verdict.Fail && Hopeless.Contains(c.Name))) return null;
        if (from.Opening.Connector != "LC-duplex" || to.Opening.Connector != "LC-duplex") return null;
        var part = context.Catalogue.Sundries
            .Where(s => s.Attenuation is { } a && a.Value >= -margin)
            .OrderBy(s => s.Attenuation)
            .FirstOrDefault();
        if (part?.Attenuation is not { } loss) return null;
        var cured = Judge(link, from, to, media, cords, channel with { Attenuator = loss });
        // The worse direction decides how strong it is; the other may need one as well.
        var (atFrom, atTo) = FibreLinkChecks.Overloaded(context.Standards, channel, from.Type, to.Type);
        return Fitted(cured, part, atFrom && atTo ? "" : atFrom ? "from" : "to", atFrom && atTo ? 2 : 1);
    }

    private static Solution Fitted(Solution solution, SundryModel part, string end, int quantity) => solution with
    {
        Name = solution.Name + ", " + part.Name,
        Attenuator = part,
        AttenuatorEnd = end,
        Parts = [.. solution.Parts, new PartUse(part, null, 1, quantity)],
    };

    /// <summary>An attenuator the plan states; where the catalogue has none like it, one without a price stands for it.</summary>
    private SundryModel Stated(Decibels loss) =>
        context.Catalogue.Sundries.FirstOrDefault(s => s.Attenuation is { } a && Math.Round(a.Value - loss.Value, 4) == 0)
        ?? new SundryModel
        {
            Name = $"attenuator {loss}",
            Title = $"Attenuator {loss}, not in the catalogue",
            Attenuation = loss,
            Adapts = "",
        };
}
