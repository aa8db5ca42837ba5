using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Mating;

/// <summary>What a module can do between its electrical and its media lanes, and what that makes of the port's code. Source unless a
/// line says otherwise: lane counts, symbol rates and codes of the IEEE 802.3 clauses and annexes (memory).</summary>
public sealed class GearboxTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    [Theory]
    [InlineData("800GAUI-8", "800GBASE-DR8", GearboxKind.Straight)]
    [InlineData("400GAUI-4", "400GBASE-FR4", GearboxKind.Straight)]
    [InlineData("CAUI-4", "100GBASE-LR4", GearboxKind.Straight)]
    [InlineData("SFI", "10GBASE-LR", GearboxKind.Straight)]
    [InlineData("200GAUI-1", "200GBASE-DR1-2", GearboxKind.Straight)] // an inner code is added on the way
    [InlineData("400GAUI-8", "400GBASE-DR4", GearboxKind.Forward)]
    [InlineData("400GAUI-16", "400GBASE-FR8", GearboxKind.Forward)]
    [InlineData("100GAUI-4", "100GBASE-DR", GearboxKind.Forward)] // 4 x 26.5625 NRZ hold the bits of 1 x 53.125 PAM4
    [InlineData("800GAUI-8", "800GBASE-FR4", GearboxKind.Forward)]
    [InlineData("CAUI-4", "100GBASE-DR", GearboxKind.CodeMaking)] // 4 x 25.78125 NRZ do not
    [InlineData("CAUI-4", "100GBASE-LR1", GearboxKind.CodeMaking)]
    [InlineData("400GAUI-8", "800GBASE-LR1", GearboxKind.None)] // half the rate
    [InlineData("800GAUI-8", "800GBASE-LR1", GearboxKind.CodeMaking)] // coherent
    [InlineData("CAUI-4", "100GBASE-SR2", GearboxKind.None)]
    [InlineData("CAUI-4", "400GBASE-DR4", GearboxKind.None)] // a quarter of the rate
    [InlineData("100GAUI-4", "100GBASE-LR4", GearboxKind.None)] // 26.5625 against 25.78125 GBd
    [InlineData("LAUI-2", "50GBASE-SR", GearboxKind.None)]
    [InlineData("400GAUI-4", "400GBASE-SR8", GearboxKind.None)] // reverse
    [InlineData("100GAUI-2", "100GBASE-SR4", GearboxKind.None)]
    [InlineData("CAUI-4", "100GBASE-SR10", GearboxKind.None)]
    public void Kind_FollowsFromLanesAndCodes(string host, string media, GearboxKind expected) =>
        Assert.Equal(expected, Gearbox.Between(Limits.Host(host)!, Limits.Interface(media)!).Kind);

    [Theory]
    [InlineData("100GAUI-2", "400GBASE-DR4", 4, GearboxKind.Forward)]
    [InlineData("100GAUI-1", "400GBASE-DR4", 4, GearboxKind.Straight)]
    [InlineData("50GAUI-1", "400GBASE-SR8", 8, GearboxKind.Straight)]
    [InlineData("25GAUI", "100GBASE-SR4", 4, GearboxKind.Straight)]
    [InlineData("100GAUI-1", "400GBASE-SR8", 4, GearboxKind.None)]
    [InlineData("200GAUI-4", "400GBASE-DR4", 4, GearboxKind.None)]
    public void Lanes_AreDealtOutToPorts(string host, string media, int ports, GearboxKind expected) =>
        Assert.Equal(expected, Gearbox.Between(Limits.Host(host)!, Limits.Interface(media)!, ports).Kind);

    // The table of codes a checker needs: what is on the wire and what the port sets, by type and by the lanes behind it (memory; the
    // deployed habits at 25G and the copper classes are seen, and tested with the copper).
    [Theory]
    [InlineData("10GBASE-SR", "SFI", "none", "none")]
    [InlineData("10GBASE-LR", "SFI", "none", "none")]
    [InlineData("10GBASE-ER", "SFI", "none", "none")]
    [InlineData("25GBASE-SR", "25GAUI", "RS(528,514)", "RS(528,514)")]
    [InlineData("25GBASE-LR", "25GAUI", "RS(528,514)", "RS(528,514)")]
    [InlineData("25GBASE-ER", "25GAUI", "RS(528,514)", "RS(528,514)")]
    [InlineData("40GBASE-SR4", "XLPPI", "none", "none")]
    [InlineData("40GBASE-LR4", "XLAUI", "none", "none")]
    [InlineData("50GBASE-SR", "50GAUI-1", "RS(544,514)", "RS(544,514)")]
    [InlineData("50GBASE-FR", "50GAUI-1", "RS(544,514)", "RS(544,514)")]
    [InlineData("50GBASE-LR", "50GAUI-1", "RS(544,514)", "RS(544,514)")]
    [InlineData("100GBASE-SR4", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100GBASE-LR4", "CAUI-4", "none", "none")]
    [InlineData("100GBASE-ER4", "CAUI-4", "none", "none")]
    [InlineData("100G-CWDM4", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100G-PSM4", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100G-4WDM-10", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100G-4WDM-20", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100G-4WDM-40", "CAUI-4", "RS(528,514)", "RS(528,514)")]
    [InlineData("100GBASE-SR2", "100GAUI-2", "RS(544,514)", "RS(544,514)")]
    [InlineData("100GBASE-DR", "CAUI-4", "RS(544,514)", "none")]
    [InlineData("100GBASE-FR1", "CAUI-4", "RS(544,514)", "none")]
    [InlineData("100GBASE-LR1", "CAUI-4", "RS(544,514)", "none")]
    [InlineData("100GBASE-SR1", "CAUI-4", "RS(544,514)", "none")]
    [InlineData("100GBASE-VR1", "CAUI-4", "RS(544,514)", "none")]
    [InlineData("100GBASE-DR", "100GAUI-2", "RS(544,514)", "RS(544,514)")]
    [InlineData("100GBASE-FR1", "100GAUI-1", "RS(544,514)", "RS(544,514)")]
    [InlineData("200GBASE-FR4", "200GAUI-4", "RS(544,514)", "RS(544,514)")]
    [InlineData("400GBASE-DR4", "400GAUI-8", "RS(544,514)", "RS(544,514)")]
    [InlineData("400GBASE-SR8", "400GAUI-8", "RS(544,514)", "RS(544,514)")]
    [InlineData("800GBASE-DR8", "800GAUI-8", "RS(544,514)", "RS(544,514)")]
    [InlineData("800GBASE-FR4", "800GAUI-4", "RS(544,514)+inner", "RS(544,514)")]
    [InlineData("800GBASE-DR4-2", "800GAUI-4", "RS(544,514)+inner", "RS(544,514)")]
    [InlineData("800GBASE-ER1", "800GAUI-8", "oFEC", "RS(544,514)")] // the code of the line is the module's, that of the lanes the host's
    public void Codes_FollowFromTypeAndHost(string media, string host, string onWire, string atPort)
    {
        var side = FecSide.Of(Limits.Interface(media)!, Limits.Host(host)!, moduleHasOwn: false);
        Assert.Equal((onWire, atPort), (side.OnWire, side.AtPort));
    }

    // A catalogue may say that a module makes a code only where a code is left to be made.
    [Theory]
    [InlineData("100G-CWDM4", "CAUI-4", "none")] // some modules of the type make it for hosts that have none
    [InlineData("400GBASE-DR4", "400GAUI-8", "RS(544,514)")]
    [InlineData("100GBASE-LR4", "CAUI-4", "none")]
    public void Flag_MovesTheCodeOnlyWhereItCan(string media, string host, string atPort) =>
        Assert.Equal(atPort, FecSide.Of(Limits.Interface(media)!, Limits.Host(host)!, moduleHasOwn: true).AtPort);

    // What platforms let a cage be split into. Source: port lists of platforms (common practice); splits into two, four and eight and
    // two-level lanes on four-level ports are read in a network operating system's port guide (seen).
    [Theory]
    [InlineData("8x50G", "1x400G", 8, "50G", true)]
    [InlineData("8x50G", "2x200G", 4, "50G", true)]
    [InlineData("8x50G", "4x100G", 2, "50G", true)]
    [InlineData("8x50G", "8x50G", 1, "50G", true)]
    [InlineData("8x50G", "2x100G", 4, "25G", true)]
    [InlineData("8x50G", "1x200G", 4, "50G", true)]
    [InlineData("8x50G", "1x100G", 4, "25G", true)]
    [InlineData("8x50G", "4x25G", 1, "25G", true)]
    [InlineData("8x50G", "8x25G", 1, "25G", true)]
    [InlineData("8x50G", "1x40G", 4, "10G", true)]
    [InlineData("8x50G", "4x10G", 1, "10G", true)]
    [InlineData("8x50G", "4x100G", 1, "100G", false)]
    [InlineData("8x50G", "8x100G", 1, "100G", false)]
    [InlineData("8x50G", "1x800G", 8, "100G", false)]
    [InlineData("4x25G", "1x100G", 4, "25G", true)]
    [InlineData("4x25G", "2x50G", 2, "25G", true)]
    [InlineData("4x25G", "4x25G", 1, "25G", true)]
    [InlineData("4x25G", "1x40G", 4, "10G", true)]
    [InlineData("4x25G", "4x10G", 1, "10G", true)]
    [InlineData("4x25G", "1x100G", 2, "50G", false)]
    [InlineData("4x25G", "4x50G", 1, "50G", false)]
    [InlineData("4x50G", "1x200G", 4, "50G", true)]
    [InlineData("4x50G", "2x100G", 2, "50G", true)]
    [InlineData("4x50G", "4x50G", 1, "50G", true)]
    [InlineData("4x50G", "1x100G", 4, "25G", true)]
    [InlineData("4x100G", "1x400G", 4, "100G", true)]
    [InlineData("4x100G", "2x200G", 2, "100G", true)]
    [InlineData("4x100G", "4x100G", 1, "100G", true)]
    [InlineData("4x100G", "1x200G", 4, "50G", true)]
    [InlineData("4x100G", "2x100G", 2, "50G", true)]
    [InlineData("4x100G", "4x50G", 1, "50G", true)]
    [InlineData("8x100G", "1x800G", 8, "100G", true)]
    [InlineData("8x100G", "2x400G", 4, "100G", true)]
    [InlineData("8x100G", "4x200G", 2, "100G", true)]
    [InlineData("8x100G", "8x100G", 1, "100G", true)]
    [InlineData("8x100G", "1x400G", 8, "50G", true)]
    [InlineData("8x100G", "2x200G", 4, "50G", true)]
    [InlineData("8x100G", "4x100G", 2, "50G", true)]
    [InlineData("8x100G", "8x50G", 1, "50G", true)]
    [InlineData("8x200G", "1x1600G", 8, "200G", true)]
    [InlineData("8x200G", "2x800G", 4, "200G", true)]
    [InlineData("8x200G", "4x400G", 2, "200G", true)]
    [InlineData("8x200G", "8x200G", 1, "200G", true)]
    public void Cage_IsSplitAsPlatformsDo(string cage, string mode, int lanes, string signal, bool isPossible)
    {
        var parts = mode.Split('x');
        Assert.True(UnitText.TryRead(parts[1], UnitText.Rates, out var gigabits));
        Assert.Equal(isPossible, Limits.CageModes(cage).Any(m =>
            m.Ways == int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)
            && m.Rate == BitRate.FromGigabits(gigabits)
            && m.LanesPerPort == lanes
            && m.Signal == Limits.Signal(signal)
            && m.Possible));
    }

    // What the 25G lanes, the old body and the port group cost is said as a condition, never left out.
    [Theory]
    [InlineData("8x50G", "8x50G")]
    [InlineData("8x50G", "2x100G")]
    [InlineData("8x50G", "8x25G")]
    [InlineData("8x50G", "4x25G")]
    [InlineData("8x50G", "1x40G")]
    [InlineData("8x200G", "1x800G")]
    public void ModesOnListOnly_SaySo(string cage, string mode)
    {
        var ways = mode[0] - '0';
        var modes = Limits.CageModes(cage).Where(m => m.Ways == ways && m.Ways + "x" + m.Rate == mode);
        Assert.Contains(modes, m => m.Condition.Length > 0);
    }

    // A plan is judged by the same place as two ends: what cannot be made is an error of the catalogue.
    [Theory]
    [InlineData("fixed-32x400", "QSFP-DD", "400GAUI-8>400GBASE-DR4", "no", "400G", null)]
    [InlineData("fixed-32x400", "QSFP-DD", "400GAUI-8>400GBASE-DR4", "yes", "400G", "LW2111")]
    [InlineData("fixed-32x100", "QSFP28", "CAUI-4>100GBASE-DR", "yes", "100G", null)]
    [InlineData("fixed-32x100", "QSFP28", "CAUI-4>100GBASE-DR", "no", "100G", "LW2111")]
    [InlineData("fixed-32x100", "QSFP28", "CAUI-4>400GBASE-DR4", "yes", "100G", "LW2110")]
    [InlineData("fixed-32x400", "QSFP-DD", "400GAUI-8>400GBASE-SR16", "no", "400G", "LW2110")]
    [InlineData("fixed-32x400", "QSFP-DD", "100GAUI-2>100GBASE-LR4", "no", "100G", "LW2110")]
    [InlineData("fixed-32x100", "QSFP28", "100GAUI-2>100GBASE-SR2", "no", "100G", "LW2107")] // no four levels in that body
    public void Plan_IsJudgedByTheSamePlace(string device, string body, string application, string flag, string rate, string? code)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            catalogue: [own.yaml]
            devices:
              a: { model: {{device}} }
              b: { model: {{device}} }
            links:
              up: { from: { of: a, module: own }, to: { of: b, module: own }, rate: {{rate}}, length: 30 m }
            # file: own.yaml
            modules:
              own: { title: own module, form-factor: {{body}}, applications: "{{application}}", power: 1 W, fec-in-module: {{flag}} }
            """);
        var spoken = judged.Findings.Select(f => f.Kind.Code).Where(c => c is "LW2107" or "LW2110" or "LW2111").Distinct();
        Assert.Equal(code is null ? [] : [code], spoken);
    }
}
