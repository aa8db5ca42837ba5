using Lanewright.Engineering.Links;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Mating;

/// <summary>Holds two ends together: mechanics, electrical lanes, light, codes and, if the way is known, the way.</summary>
public sealed class Mating
{
    private readonly StandardsLibrary standards;
    private readonly PortDescription left;
    private readonly PortDescription right;
    private readonly MatingWay way;
    private readonly List<string> conditions = [];
    private readonly List<MatingReason> reasons = [];

    private Mating(StandardsLibrary standards, PortDescription left, PortDescription right, MatingWay way)
    {
        this.standards = standards;
        this.left = left;
        this.right = right;
        this.way = way;
    }

    /// <summary>The answer for two ends, over a way if one is given.</summary>
    public static MatingAnswer Of(StandardsLibrary standards, PortDescription left, PortDescription right, MatingWay way)
    {
        var mating = new Mating(standards, left, right, way);
        mating.Judge();
        // Where it never works there is nothing to see to.
        return new MatingAnswer(mating.reasons.Count > 0 ? [] : [.. mating.conditions.Distinct()], [.. mating.reasons.Distinct()]);
    }

    private void Judge()
    {
        var (leftWays, rightWays) = Ways();
        var rate = leftWays > 1 ? right.Rate : rightWays > 1 ? left.Rate : Smaller(left.Rate, right.Rate);
        var leftFit = EndFit.Of(standards, left, rate, leftWays);
        var rightFit = EndFit.Of(standards, right, rate, rightWays);
        foreach (var fit in new[] { leftFit, rightFit })
        {
            conditions.AddRange(fit.Conditions);
            reasons.AddRange(fit.Reasons);
        }
        if (left.Optical is { } a && right.Optical is { } b) Light(a, b, leftWays, rightWays, leftFit, rightFit);
        else Copper(leftWays, rightWays);
    }

    /// <summary>How each end is split so that both run ports of one rate.</summary>
    private (int Left, int Right) Ways()
    {
        if (left.Rate > right.Rate && right.Rate.BitsPerSecond > 0 && left.Rate.BitsPerSecond % right.Rate.BitsPerSecond == 0)
            return ((int)(left.Rate.BitsPerSecond / right.Rate.BitsPerSecond), 1);
        if (right.Rate > left.Rate && left.Rate.BitsPerSecond > 0 && right.Rate.BitsPerSecond % left.Rate.BitsPerSecond == 0)
            return (1, (int)(right.Rate.BitsPerSecond / left.Rate.BitsPerSecond));
        return (1, 1);
    }

    private void Copper(int leftWays, int rightWays)
    {
        if (left.Copper is not { } a || right.Copper is not { } b)
        {
            reasons.Add(new MatingReason(
                CheckNames.FibreKind, $"{left.TypeName} and {right.TypeName}: copper at one end, light at the other"));
            return;
        }
        if (a.IsTwistedPair != b.IsTwistedPair)
            reasons.Add(new MatingReason(CheckNames.FibreKind, $"{a.Name} and {b.Name} run on different cable"));
        if (a.IsTwistedPair || b.IsTwistedPair)
        {
            TwistedPair(a, b);
            return;
        }
        if (a.Lanes * rightWays != b.Lanes * leftWays)
            reasons.Add(new MatingReason(CheckNames.MediaLanes, $"{a.Name} has {a.Lanes} lanes, {b.Name} has {b.Lanes}"));
        if (a.Signal.Baud != b.Signal.Baud)
            reasons.Add(new MatingReason(CheckNames.LaneBaud, $"{a.Name} runs {a.Signal.Baud} a lane, {b.Name} {b.Signal.Baud}"));
        if (a.Signal.Modulation != b.Signal.Modulation)
        {
            var (levelsOfA, levelsOfB) = (LaneSignal.Name(a.Signal.Modulation), LaneSignal.Name(b.Signal.Modulation));
            reasons.Add(new MatingReason(CheckNames.LaneModulation, $"{a.Name} is {levelsOfA}, {b.Name} {levelsOfB}"));
        }
        Breakout(leftWays, rightWays);
        Longest(a.Reach, b.Reach);
        if (a.Name != b.Name && a.Fec != b.Fec && a.Signal.Modulation == Modulation.Nrz)
            conditions.Add("both ports must be set to a code that both have");
    }

    private void TwistedPair(CopperType a, CopperType b)
    {
        if (a.Name == b.Name) return;
        if (a.IsTwistedPair && b.IsTwistedPair)
        {
            reasons.Add(new MatingReason(CheckNames.LaneModulation,
                $"{a.Name} and {b.Name} are different line codes; a port that has both agrees on one by auto-negotiation, "
                + "so ask about that one at both ends"));
        }
    }

    private void Light(InterfaceType a, InterfaceType b, int leftWays, int rightWays, EndFit leftFit, EndFit rightFit)
    {
        if (leftWays > 1) Split(a, b, leftWays);
        else if (rightWays > 1) Split(b, a, rightWays);
        foreach (var check in MediaMatch.Of(a, b).Where(c => c.Verdict == Verdict.Fail && !IsAboutSplit(c, leftWays, rightWays)))
            reasons.Add(new MatingReason(check.Name, check.Note));
        Codes(a, b, leftFit, rightFit);
        if (a.Lanes.IsEmpty && a.Name == b.Name)
            conditions.Add($"both ends on one channel ({a.Sheet.Word("band")}), and the line between them engineered");
        if (a.IsDraft || b.IsDraft)
            conditions.Add("the standard of one type was a draft when its values were taken; check the published text");
        if (way.Fibre is { } fibre && fibre.Kind != a.FibreKind)
            reasons.Add(new MatingReason(CheckNames.FibreKind, $"{a.Name} does not run on {fibre.Name}"));
        if (reasons.Count > 0) return;
        Breakout(leftWays, rightWays);
        if (leftWays > 1 || rightWays > 1) FanOut(a, b, Math.Max(leftWays, rightWays));
        Reach(a, b);
        Levels(a, b);
    }

    /// <summary>Lanes of a split end are compared as split.</summary>
    private static bool IsAboutSplit(Check check, int leftWays, int rightWays) =>
        (leftWays > 1 || rightWays > 1) && check.Name == CheckNames.MediaLanes;

    private void Split(InterfaceType wide, InterfaceType narrow, int ways)
    {
        var fibres = LaneSplit.Fibres(wide, narrow, ways);
        if (fibres.Verdict == Verdict.Fail)
        {
            reasons.Add(new MatingReason(fibres.Name, fibres.Note));
            return;
        }
        var lanes = LaneSplit.Lanes(wide, narrow, ways);
        if (lanes.Verdict == Verdict.Fail) reasons.Add(new MatingReason(lanes.Name, lanes.Note));
    }

    private void Codes(InterfaceType a, InterfaceType b, EndFit leftFit, EndFit rightFit)
    {
        if (a.Fec == b.Fec) return;
        var bothNrz = a.Signal.Modulation == Modulation.Nrz && b.Signal.Modulation == Modulation.Nrz;
        if (bothNrz && !leftFit.HasOwnFec && !rightFit.HasOwnFec)
        {
            var code = a.Fec == FecSide.None ? b.Fec : a.Fec;
            conditions.Add(
                $"{a.Name} asks for {a.Fec} and {b.Name} for {b.Fec}: set both ports to {code}, outside one of the two standards");
            return;
        }
        reasons.Add(new MatingReason(CheckNames.WireFec, $"{a.Name} puts {a.Fec} on the wire, {b.Name} {b.Fec}"));
    }

    private void Breakout(int leftWays, int rightWays)
    {
        const string ifListed = "if its platform and module list that";
        if (leftWays > 1) conditions.Add($"the {left.TypeName} end runs as breakout {leftWays}x{right.Rate}, {ifListed}");
        if (rightWays > 1) conditions.Add($"the {right.TypeName} end runs as breakout {rightWays}x{left.Rate}, {ifListed}");
    }

    private void FanOut(InterfaceType a, InterfaceType b, int ways)
    {
        var wide = a.Rate > b.Rate ? a : b;
        var narrow = a.Rate > b.Rate ? b : a;
        // A module of several whole links shows an opening for each.
        if (wide.FibrePairs == 1 || wide.Connector == narrow.Connector || wide.Connector == $"{ways}x{narrow.Connector}") return;
        conditions.Add($"a fan-out from {Opening(wide)} to {ways} x {Opening(narrow)}, lane by lane in order");
    }

    private static string Opening(InterfaceType type) => $"{type.Connector} {type.Polish}".TrimEnd();

    private void Reach(InterfaceType a, InterfaceType b)
    {
        var fibre = way.Fibre ?? standards.Fibres.First(f => f.Kind == a.FibreKind && (f.Name is "OS2" or "OM4"));
        var (shortest, other) = (Known(a, fibre), Known(b, fibre));
        if (way.Length is { } length)
        {
            OverWay(a, b, fibre, length);
            return;
        }
        if (a.Name == b.Name) return;
        Longest(shortest, other);
    }

    private static Known<Length>? Known(InterfaceType type, Fibre fibre) => type.Reach(fibre);

    /// <summary>Unequal reaches: the link takes the shorter one.</summary>
    private void Longest(Known<Length>? one, Known<Length>? other)
    {
        if (one is not { } a || other is not { } b)
        {
            conditions.Add("the reach of one end is not known");
            return;
        }
        if (a.Value != b.Value) conditions.Add($"no longer than {(a.Value < b.Value ? a.Value : b.Value)}, the reach of the shorter type");
        else if (left.Rate != right.Rate) conditions.Add($"no longer than {a.Value}");
        if (way.Length is { } length && length > (a.Value < b.Value ? a.Value : b.Value))
            reasons.Add(new MatingReason(CheckNames.Reach, $"{length} is longer than both types reach"));
    }

    private void OverWay(InterfaceType a, InterfaceType b, Fibre fibre, Length length)
    {
        foreach (var check in FibreLinkChecks.Of(standards, ChannelOf(fibre, length), a, b))
        {
            if (check.Name is CheckNames.Overload or CheckNames.Damage || check.IsAdvice) continue;
            if (check.Verdict == Verdict.Fail) reasons.Add(new MatingReason(check.Name, Choice.LostBy.Describe(check)));
            else if (check.IsConditional) conditions.Add(check.Note);
        }
    }

    /// <summary>Too much light on short fibre, both ways.</summary>
    private void Levels(InterfaceType a, InterfaceType b)
    {
        foreach (var (tx, rx) in new[] { (a, b), (b, a) })
        {
            var fibre = way.Fibre ?? standards.Fibres.First(f => f.Kind == tx.FibreKind);
            var bare = FibreLinkChecks.Overload(standards, ChannelOf(fibre, default), tx, rx);
            if (bare.Verdict == Verdict.Unproven)
            {
                var unknown = tx.TxAverageMax is null ? tx.Name : rx.Name;
                if (a.Name != b.Name || tx.Lanes.IsEmpty)
                    conditions.Add($"the levels of {unknown} are not known: check that no receiver is overloaded");
                continue;
            }
            var overWay = FibreLinkChecks.Overload(standards, ChannelOf(fibre, way.Length ?? default), tx, rx);
            if (overWay.Verdict != Verdict.Fail || bare.Margin is not { } excess) continue;
            var loss = $"at least {Db(-excess)} of loss between the {tx.Name} transmitter and the {rx.Name} receiver";
            if (MostLoss(tx, rx) is { } allowed && -excess > allowed + 1e-9)
                reasons.Add(new MatingReason(CheckNames.Overload, $"{loss} is needed, and {Db(allowed)} is the most there may be"));
            else
                conditions.Add(tx.FibreKind == FibreKind.SingleMode ? loss + ": an attenuator on short fibre" : loss);
        }
    }

    /// <summary>The most loss there may be from one to the other. On single mode an attenuator stands before one receiver, and the budget
    /// of that direction decides; on multimode there is none, and the channel has its own limit. Null when nothing is known.</summary>
    private double? MostLoss(InterfaceType tx, InterfaceType rx)
    {
        var fibres = standards.Fibres.Where(f => f.Kind == tx.FibreKind && (way.Fibre is null || f == way.Fibre)).ToList();
        if (tx.FibreKind == FibreKind.SingleMode && FibreLinkChecks.AllowedLoss(tx, rx, fibres[0]) is { } budget) return budget.Value;
        double? most = null;
        foreach (var fibre in fibres)
        {
            if (tx.LossMax(fibre) is not { } near || rx.LossMax(fibre) is not { } far) continue;
            most = Math.Max(most ?? 0, Math.Min(near.Value.Value, far.Value.Value));
        }
        return most;
    }

    private static string Db(double value) => Numerals.Unit(Math.Round(value, 4), "dB");

    private static Channel ChannelOf(Fibre fibre, Length length)
    {
        var none = new Known<Decibels>(default, Text.Citation.OfPlan);
        return new Channel { Fibre = fibre, Length = length, ConnectionLoss = none, SpliceLoss = none };
    }

    private static BitRate Smaller(BitRate a, BitRate b) => a < b ? a : b;
}
