using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Auto-negotiation and training: copper has them, optics and active cables do not.</summary>
public static class StartupChecks
{
    private static readonly Citation Clause73 = new("IEEE 802.3", "73", "", Mark.Memory);

    /// <summary>Ports on optics or active cables.</summary>
    public static IEnumerable<Check> WithoutNegotiation(EndUse from, EndUse to)
    {
        foreach (var (end, side) in Sides(from, to))
        {
            var isOff = end.FixedAutonegotiation != true;
            yield return Check.Of(CheckNames.Autonegotiation, isOff, Clause73,
                isOff ? "" : "optical and active ends do not negotiate, and auto-negotiation is switched on") with { End = side };
        }
    }

    /// <summary>Ports on passive copper.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other.</param>
    /// <param name="type">What they run.</param>
    public static IEnumerable<Check> OnCopper(EndUse from, EndUse to, CopperType type) =>
        type.HasAutonegotiation ? Negotiated(from, to, type) : NeverNegotiated(from, to, type);

    private static IEnumerable<Check> NeverNegotiated(EndUse from, EndUse to, CopperType type)
    {
        foreach (var (end, side) in Sides(from, to))
        {
            if (end.FixedAutonegotiation == true)
                yield return Check.Of(CheckNames.Autonegotiation, false, type.Definition,
                    $"{type.Name} has no auto-negotiation, and it is switched on") with { End = side };
        }
    }

    private static IEnumerable<Check> Negotiated(EndUse from, EndUse to, CopperType type)
    {
        // The value of the field is the clause that describes it: 73 for twinax, 28 for twisted pair.
        var clause = new Citation("IEEE 802.3", type.Sheet.Word("autonegotiation"), "", Mark.Memory);
        var fromOn = from.FixedAutonegotiation
            ?? (IsOnUnlessSaid(from, from, to, type) && (to.FixedAutonegotiation ?? IsOnUnlessSaid(to, from, to, type)));
        var toOn = to.FixedAutonegotiation ?? (IsOnUnlessSaid(to, from, to, type) && fromOn);
        foreach (var check in ForcedCodes(from, fromOn, to, toOn, type, clause)) yield return check;
        yield return Check.Of(CheckNames.Autonegotiation, fromOn == toOn, clause,
            fromOn == toOn ? "" : "auto-negotiation runs at one end and not at the other; switch it on at both or off at both");
        foreach (var (end, side) in Sides(from, to))
        {
            if (end.FixedAutonegotiation == true && !end.Cage.HasAutonegotiation)
                yield return Check.Of(CheckNames.Autonegotiation, false, clause,
                    "the port has no auto-negotiation, and it is switched on") with { End = side };
        }
        if (type.IsTwistedPair)
            yield return Check.Of(CheckNames.Autonegotiation, fromOn || toOn, clause,
                fromOn || toOn ? "" : "ports on twisted pair agree by auto-negotiation which of them leads; switch it on at both");
        if (!type.NeedsTraining) yield break;
        yield return Check.Of(CheckNames.Training, fromOn && toOn, clause,
            fromOn && toOn ? "" : "copper at this lane rate trains, and training is part of auto-negotiation: it has to run at both ends");
    }

    /// <summary>Whether auto-negotiation is to run on copper between two ports.</summary>
    public static bool Runs(EndUse from, EndUse to, CopperType type) => type.HasAutonegotiation
        && (from.FixedAutonegotiation ?? IsOnUnlessSaid(from, from, to, type))
        && (to.FixedAutonegotiation ?? IsOnUnlessSaid(to, from, to, type));

    /// <summary>Where the plan leaves it open, negotiation runs if the port has it; a code the plan fixes leaves nothing to negotiate,
    /// unless the lanes have to train or the plan wants negotiation at the other end.</summary>
    private static bool IsOnUnlessSaid(EndUse end, EndUse from, EndUse to, CopperType type)
    {
        var isWanted = (from.FixedAutonegotiation ?? to.FixedAutonegotiation) == true;
        var isFree = type.NeedsTraining || type.IsTwistedPair || isWanted || (from.FixedFec ?? to.FixedFec) is null;
        return end.Cage.HasAutonegotiation && isFree;
    }

    /// <summary>The code is a part of what is negotiated: with both, platforms do different things.</summary>
    private static IEnumerable<Check> ForcedCodes(EndUse from, bool fromOn, EndUse to, bool toOn, CopperType type, Citation clause)
    {
        if (type.IsTwistedPair) yield break;
        foreach (var (end, isOn, side) in new[] { (from, fromOn, "from"), (to, toOn, "to") })
        {
            if (end.FixedFec is not { } code) continue;
            yield return Check.Of(CheckNames.NegotiatedCode, !isOn, clause,
                isOn ? $"the code is fixed to {code} and auto-negotiation, which agrees on the code, runs" : "") with { End = side };
        }
    }

    private static IEnumerable<(EndUse End, string Side)> Sides(EndUse from, EndUse to)
    {
        yield return (from, "from");
        yield return (to, "to");
    }
}
