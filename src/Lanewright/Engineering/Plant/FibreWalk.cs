using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Follows fibres of one link through its cords and trunks, position by position.</summary>
internal sealed class FibreWalk
{
    private readonly PolarityTable table;
    private readonly ImmutableArray<TrunkPatch> hops;
    private readonly ImmutableArray<TrunkInside> insides;
    private readonly WayCords cords;
    private readonly ImmutableArray<string> types;
    private readonly int lanes;

    /// <summary>A link with cords of given types.</summary>
    /// <param name="table">What is known of positions.</param>
    /// <param name="hops">The trunks it goes through.</param>
    /// <param name="insides">How those lead fibres.</param>
    /// <param name="cords">What its cords join.</param>
    /// <param name="types">The type of each cord.</param>
    public FibreWalk(
        PolarityTable table, ImmutableArray<TrunkPatch> hops, ImmutableArray<TrunkInside> insides, WayCords cords,
        ImmutableArray<string> types)
    {
        this.table = table;
        this.hops = hops;
        this.insides = insides;
        this.cords = cords;
        this.types = types;
        lanes = LanesOn(table, cords);
    }

    /// <summary>Types of fan-out cords: pairs are the outermost positions first, and each leg is plugged in as an A-to-B cord is.</summary>
    public const string FanOut = "fan-out";

    /// <summary>Lanes each way at the arrays; 0 where their order is not known.</summary>
    public static int LanesOn(PolarityTable table, WayCords cords)
    {
        var positions = cords.Positions.Max();
        var most = positions == 0 ? 1 : table.LanesOf(positions)?.Value ?? 0;
        return cords.Lanes > 0 ? Math.Min(most, cords.Lanes) : most;
    }

    /// <summary>Every fibre of the link, those that send from the first end before those that are heard there.</summary>
    public ImmutableArray<FibreLine> All()
    {
        var lines = ImmutableArray.CreateBuilder<FibreLine>();
        foreach (var isSent in new[] { true, false })
        {
            if (cords.Positions[0] == 0)
                lines.Add(Line(isSent, Math.Max(1, cords.Part), FibreSpot.Of(1, isSent ? 1 : 2)));
            else
                for (var lane = 1; lane <= lanes; lane++)
                    if (cords.Part == 0 || cords.Part == lane)
                        lines.Add(Line(isSent, lane, FibreSpot.Of(isSent ? lane : cords.Positions[0] + 1 - lane)));
        }
        return lines.ToImmutable();
    }

    private FibreLine Line(bool isSent, int lane, FibreSpot start)
    {
        var line = ImmutableArray.CreateBuilder<FibreHop>(hops.Length);
        var at = start;
        for (var i = 0; i < hops.Length && at != default; i++)
        {
            at = Cord(i, at);
            if (at == default) break;
            var far = Trunk(i, at);
            line.Add(new FibreHop(at, insides[i].FibreOf(at, hops[i].Leg.IsTurned), far));
            at = far;
        }
        if (at != default) at = Cord(hops.Length, at);
        var (meetsReceiver, endLane) = EndOf(at);
        return new FibreLine(isSent, lane, start, line.ToImmutable(), at, meetsReceiver, endLane);
    }

    /// <summary>Through a cord; nowhere where the fibre belongs to another leg of a fan-out.</summary>
    private FibreSpot Cord(int joint, FibreSpot at)
    {
        var port = joint < hops.Length ? hops[joint].NearPort : 1;
        switch (cords.Kinds[joint])
        {
            case PatchKind.Array:
                return table.Part(ArrayPartKind.Cable, types[joint]) is { } cable && at.Position > 0
                    ? FibreSpot.Of(PositionMap.Of(cable.Map, cords.Positions[joint])[at.Position])
                    : default;
            case PatchKind.Duplex:
                return table.Part(ArrayPartKind.Cord, types[joint]) is { } cord && at.IsDuplex
                    ? FibreSpot.Of(port, PositionMap.Of(cord.Map, 2)[at.Side])
                    : default;
            case PatchKind.Split:
                if (at.Position == 0) return default;
                var fibre = Legs(joint).Backward()[at.Position];
                return (fibre + 1) / 2 == cords.Part ? FibreSpot.Of(port, fibre % 2 == 1 ? 1 : 2).Crossed : default;
            default:
                return at.IsDuplex ? FibreSpot.Of(Legs(joint)[(2 * cords.Part) - 2 + at.Crossed.Side]) : default;
        }
    }

    private PositionMap Legs(int joint) =>
        PositionMap.Of(table.Part(ArrayPartKind.Transition, "paired")?.Map ?? ArrayMap.EndToEnd, cords.Positions[joint]);

    /// <summary>Through a trunk; nowhere where the fibre comes out at another port than the link is patched from.</summary>
    private FibreSpot Trunk(int hop, FibreSpot at)
    {
        var far = insides[hop].Through(at, hops[hop].Leg.IsTurned);
        return far.IsDuplex && hops[hop].FarPort > 0 && far.Port != hops[hop].FarPort ? default : far;
    }

    /// <summary>What sits where a fibre ends: a receiver, a transmitter, or nothing.</summary>
    private (bool? IsReceiver, int Lane) EndOf(FibreSpot at)
    {
        if (at == default) return (null, 0);
        if (at.IsDuplex) return (at.Side == 2, Math.Max(1, cords.Part));
        var positions = cords.Positions[^1];
        if (at.Position <= lanes) return (false, at.Position);
        return at.Position > positions - lanes ? (true, positions + 1 - at.Position) : (null, 0);
    }
}
