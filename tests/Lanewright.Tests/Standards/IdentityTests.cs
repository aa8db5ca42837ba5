using System.Globalization;
using System.Text.RegularExpressions;
using Lanewright.Standards;

namespace Lanewright.Tests.Standards;

/// <summary>Limits of one interface type hang together by the algebra of its power budget. Source of the identities: the budget
/// tables of the IEEE 802.3 optical clauses (budget = loss + penalties; stressed sensitivity = largest penalty less the receiver's
/// offset).</summary>
public sealed partial class IdentityTests
{
    /// <summary>Printed figures are rounded to a tenth, three of them enter each identity.</summary>
    private const double Rounding = 0.15001;

    /// <summary>Types whose printed figures do not meet an identity, with the reason.</summary>
    private static readonly Dictionary<(string Type, string Identity), string> Exceptions = new()
    {
        [("10GBASE-SR", "receiver-minimum")] = "the receiver minimum belongs to the 300 m OM3 channel of 2.6 dB",
        [("10GBASE-SR", "budget")] = "the budget was set for the 300 m OM3 channel of 2.6 dB",
        [("40GBASE-SR4", "receiver-minimum")] = "the receiver minimum belongs to the OM3 channel of 1.9 dB",
        [("100GBASE-SR10", "receiver-minimum")] = "the receiver minimum belongs to the OM3 channel of 1.9 dB",
        [("100GBASE-SR1", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("100GBASE-VR1", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("200GBASE-SR2", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("200GBASE-VR2", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("400GBASE-SR4", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("400GBASE-VR4", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("800GBASE-SR8", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
        [("800GBASE-VR8", "oma-floor")] = "clause 167 has its lower penalty bound at 1.8 dB",
    };

    public static TheoryData<string> Types => new(StandardsLibrary.Shipped.InterfaceTypes.Select(t => t.Name));

    [Fact]
    public void Types_AreSeventyThree() => Assert.Equal(73, StandardsLibrary.Shipped.InterfaceTypes.Length);

    [Theory]
    [MemberData(nameof(Types))]
    public void ReceiverMinimum_IsTransmitterMinimumLessLoss(string name) => Hold(name, "receiver-minimum", s =>
        (Real(s, "tx-average-min") - Loss(s), Real(s, "rx-average-min")));

    [Theory]
    [MemberData(nameof(Types))]
    public void Budget_IsLossAndPenaltiesAndWhatIsLeft(string name) => Hold(name, "budget", s =>
        (Loss(s) + (Real(s, "penalties") ?? Real(s, "penalties-om4")) + Left(s), Real(s, "power-budget")));

    [Theory]
    [MemberData(nameof(Types))]
    public void StressedSensitivity_IsLargestPenaltyLessOffset(string name) => Hold(name, "stressed-sensitivity", s =>
        (Real(s, "tx-penalty-max") - Offset(s), Real(s, "rx-stressed-sensitivity")));

    [Theory]
    [MemberData(nameof(Types))]
    public void OmaFloor_LiesOnePointFourAbovePenalisedFloor(string name) => Hold(name, "oma-floor", s =>
        s.Word("tx-penalty-metric") == "TDECQ" ? (Real(s, "tx-oma-minus-penalty-min") + 1.4, Real(s, "tx-oma-min")) : (null, null));

    [Fact]
    public void Identities_AreTestedOnManyTypes()
    {
        var counted = StandardsLibrary.Shipped.InterfaceTypes.Count(t =>
            Real(t.Sheet, "tx-average-min") is not null
            && Real(t.Sheet, "rx-average-min") is not null
            && Loss(t.Sheet) is not null);
        Assert.True(counted >= 30, $"only {counted} types have values enough for the first identity");
    }

    private static void Hold(string name, string identity, Func<FactSheet, (double? Left, double? Right)> sides)
    {
        var (left, right) = sides(StandardsLibrary.Shipped.Interface(name)!.Sheet);
        if (left is not { } l || right is not { } r) return;
        var holds = Math.Abs(l - r) <= Rounding;
        var isException = Exceptions.TryGetValue((name, identity), out var reason);
        Assert.True(holds != isException, isException
            ? $"{name} meets {identity} after all: take it off the list of exceptions"
            : $"{name} {identity}: {l} against {r}; {reason}");
    }

    private static double? Real(FactSheet sheet, string field) => sheet.Real(field)?.Value;

    private static double? Loss(FactSheet sheet) => sheet["reach-os2-engineered"] is not null
        ? Real(sheet, "loss-max-os2-engineered")
        : Real(sheet, "loss-max-os2") ?? Real(sheet, "loss-max-om4") ?? Real(sheet, "loss-max-om3");

    private static double? Left(FactSheet sheet) =>
        Real(sheet, "additional-loss-engineered") ?? Real(sheet, "additional-loss-om4") ?? Real(sheet, "additional-loss") ?? 0;

    /// <summary>The receiver's offset, from a rule such as max(-4.5, SECQ-5.9) dBm.</summary>
    private static double? Offset(FactSheet sheet)
    {
        var match = OffsetOfRule().Match(sheet.Word("rx-sensitivity-rule"));
        return match.Success ? double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : null;
    }

    [GeneratedRegex(@"SECQ-([0-9.]+)")]
    private static partial Regex OffsetOfRule();
}
