using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds the cords of a way through trunks: from the first device to its panel, between panels, and from the last panel to the
/// second device. The ports of a split cage part at a fan-out cord, or at a cassette that a trunk has at one end only.</summary>
internal sealed class PatchFinder(FinderContext context)
{
    /// <summary>The cords of a class of links.</summary>
    /// <param name="link">The links.</param>
    /// <param name="way">Their way.</param>
    /// <param name="from">What the module of the first end shows.</param>
    /// <param name="to">What that of the second shows.</param>
    /// <param name="fibre">The class of fibre.</param>
    public PatchPlan Find(LinkClass link, TrunkWay way, ModuleOpening from, ModuleOpening to, string fibre)
    {
        if (link.Shape == FanShape.BothEnds)
            return Refused(CheckNames.FanOut, "both cages are split and their parts are mixed: no trunk leads them to each other");
        var isTurned = link.Shape == FanShape.ToEnd;
        var joints = Joints(link, way, from, to);
        if (isTurned) joints = [.. joints.Reverse().Select(j => new Joint(j.There, j.Here, j.Needed, j.Place, j.Module))];
        var legs = isTurned ? way.Legs.Reverse().ToList() : [.. way.Legs];
        var isSplit = isTurned || link.Shape == FanShape.FromEnd;
        // A module of several whole links has an opening for each, and nothing to take apart.
        var isOneOpening = joints[0].Here.Count == 1;
        var isWhole = isSplit && isOneOpening;
        var straight = link.Shape == FanShape.Straight && isOneOpening ? link.From.Ways : 1;
        var perCable = isWhole ? link.Legs : straight;
        var cords = ImmutableArray.CreateBuilder<PatchCord>(joints.Length);
        for (var i = 0; i < joints.Length; i++)
        {
            var splits = isWhole && IsArray(joints[i].Here) && !IsArray(joints[i].There);
            if (Cord(joints[i], fibre, splits ? link.Legs : 1) is not { } cord) return Missing(joints[i], fibre, splits ? link.Legs : 1);
            var kind = splits ? isTurned ? PatchKind.Merge : PatchKind.Split
                : IsArray(joints[i].Here) ? PatchKind.Array
                : PatchKind.Duplex;
            var links = isWhole ? link.Legs : straight;
            var positions = IsArray(joints[i].Here) ? Positions(cord.Near) : 0;
            cords.Add(new PatchCord(cord, cord.OrderedFor(joints[i].Needed) ?? joints[i].Needed, kind, links, positions));
            if (splits || (i < legs.Count && !IsArray(Front(legs[i], !isTurned)))) isWhole = false;
        }
        if (isWhole)
            return Refused(CheckNames.FanOut, "the ports of the split cage stay in one array to the end: nothing takes them apart");
        if (isTurned) cords.Reverse();
        return new PatchPlan(cords.ToImmutable(), null, perCable);
    }

    /// <summary>Where cords plug in, from the first end of the link on.</summary>
    private ImmutableArray<Joint> Joints(LinkClass link, TrunkWay way, ModuleOpening from, ModuleOpening to)
    {
        var joints = ImmutableArray.CreateBuilder<Joint>(way.Legs.Length + 1);
        var here = from;
        for (var i = 0; i < way.Legs.Length; i++)
        {
            var needed = i == 0 ? link.Needed : way.Bridges[i - 1];
            var place = $"before the trunks '{way.Legs[i].Trunk.Name}'";
            joints.Add(new Joint(here, Front(way.Legs[i], isFar: false), needed ?? default, place, i == 0 ? from.Connector : ""));
            here = Front(way.Legs[i], isFar: true);
        }
        joints.Add(new Joint(here, to, link.FarNeeded ?? default, $"behind the trunks '{way.Legs[^1].Trunk.Name}'",
            to.Connector));
        return joints.ToImmutable();
    }

    private ModuleOpening Front(TrunkLeg leg, bool isFar) =>
        isFar ? leg.FarOpening(context.Standards) : leg.NearOpening(context.Standards);

    private CordModel? Cord(Joint joint, string fibre, int legs) =>
        CordMatch.Find(context.Standards, context.Catalogue.Cords, fibre, joint.Here, joint.There, legs);

    /// <summary>Why there is no cord: no such connectors, or flat against angled, or pins against pins.</summary>
    private PatchPlan Missing(Joint joint, string fibre, int legs)
    {
        var alike = context.Catalogue.Cords
            .Where(c => c.Fibre == fibre && c.Legs == legs && CordMatch.ConnectorsFit(c, joint.Here, joint.There)).ToList();
        var polished = alike.Any(c => CordMatch.Fits(c, joint.Here, joint.There));
        var ends = $"{joint.Here} and {(legs > 1 ? $"{legs} x " : "")}{joint.There}";
        if (alike.Count == 0 && IsArray(joint.Here) && IsArray(joint.There) && joint.Module.Length > 0)
            return Refused(CheckNames.Connector, $"no {fibre} cord in the catalogue joins {ends} {joint.Place}: the modules show "
                + $"{joint.Module}; take trunks of {joint.Module}");
        if (alike.Count == 0) return Refused(CheckNames.Connector, $"no {fibre} cord in the catalogue joins {ends} {joint.Place}");
        if (!polished)
            return Refused(CheckNames.Polish, $"no {fibre} cord {joint.Place} joins {ends}: angled and flat ends must never mate");
        return Refused(CheckNames.Pins,
            $"no {fibre} cord {joint.Place} joins {ends} {Pins(joint)}: of two ends that mate one has pins and one has none");
    }

    private static string Pins(Joint joint) =>
        "(" + string.Join(", ", new[] { joint.Here, joint.There }.Select(o => o.Pins.Length > 0 ? o.Pins : "pinned")) + ")";

    private static PatchPlan Refused(string check, string problem) =>
        new([], Check.Of(check, false, CatalogueFacts.WhatIsLacking, problem), 1);

    private bool IsArray(ModuleOpening opening) => context.Standards.Connector(opening.Connector)?.Word("family") == Arrays;

    private int Positions(string connector) => (int)(context.Standards.Connector(connector)?.Real("positions")?.Value ?? 0);

    /// <summary>The family of array connectors.</summary>
    public const string Arrays = "MPO";

    /// <summary>Where a cord plugs in; of one at a module the module's connector.</summary>
    private readonly record struct Joint(ModuleOpening Here, ModuleOpening There, Length Needed, string Place, string Module);
}
