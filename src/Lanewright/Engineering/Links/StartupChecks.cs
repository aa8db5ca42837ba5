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
                isOff ? "" : "auto-negotiation is switched on, and optical and active ends do not negotiate") with { End = side };
        }
    }

    /// <summary>Ports on passive copper.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other.</param>
    /// <param name="exists">Whether the type has auto-negotiation at all.</param>
    /// <param name="needsTraining">Whether the type trains.</param>
    public static IEnumerable<Check> OnCopper(EndUse from, EndUse to, bool exists, bool needsTraining)
    {
        if (!exists) yield break;
        var fromOn = from.FixedAutonegotiation ?? (from.Cage.HasAutonegotiation && (to.FixedAutonegotiation ?? to.Cage.HasAutonegotiation));
        var toOn = to.FixedAutonegotiation ?? (to.Cage.HasAutonegotiation && fromOn);
        yield return Check.Of(CheckNames.Autonegotiation, fromOn == toOn, Clause73,
            fromOn == toOn ? "" : "auto-negotiation runs at one end and not at the other; switch it on at both or off at both");
        foreach (var (end, side) in Sides(from, to))
        {
            if (end.FixedAutonegotiation == true && !end.Cage.HasAutonegotiation)
                yield return Check.Of(CheckNames.Autonegotiation, false, Clause73, "auto-negotiation is switched on and the port has none") with { End = side };
        }
        if (!needsTraining) yield break;
        yield return Check.Of(CheckNames.Training, fromOn && toOn, Clause73,
            fromOn && toOn ? "" : "copper at this lane rate trains, and training is part of auto-negotiation: it has to run at both ends");
    }

    /// <summary>Whether auto-negotiation is to run on copper between two ports.</summary>
    public static bool Runs(EndUse from, EndUse to, bool exists) =>
        exists && (from.FixedAutonegotiation ?? from.Cage.HasAutonegotiation) && (to.FixedAutonegotiation ?? to.Cage.HasAutonegotiation);

    private static IEnumerable<(EndUse End, string Side)> Sides(EndUse from, EndUse to)
    {
        yield return (from, "from");
        yield return (to, "to");
    }
}
