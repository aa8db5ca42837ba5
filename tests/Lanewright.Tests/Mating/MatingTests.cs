using Lanewright.Engineering.Links;
using Lanewright.Engineering.Mating;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Standards;

namespace Lanewright.Tests.Mating;

/// <summary>Pairs of ends whose verdict is known. Source unless a line says otherwise: lanes, symbol rates and wavelength plans of the
/// IEEE 802.3 clauses and MSAs (memory); module and cage rules of SFF-8661, the QSFP-DD and OSFP MSAs.</summary>
public sealed class MatingTests
{
    [Theory]
    [InlineData("400GBASE-DR4", "400GBASE-DR4")]
    [InlineData("400GBASE-FR4", "400GBASE-FR4")]
    [InlineData("400GBASE-FR4", "400G-FR4")] // an overview page of 400G types names the two as one family (seen)
    [InlineData("100GBASE-FR1", "100G-FR")]
    [InlineData("100GBASE-SR4", "100GBASE-SR4")]
    [InlineData("800GBASE-DR8", "800GBASE-DR8")]
    [InlineData("QSFP28:4x25G/QSFP28/100GBASE-SR4", "QSFP-DD:8x50G/QSFP28/100GBASE-SR4")]
    [InlineData("400GBASE-CR4", "400GBASE-CR4")]
    [InlineData("SFP-DD:2x50G/SFP28/25GBASE-SR", "25GBASE-SR")] // SFP-DD MSA: its cage takes the one-lane bodies
    [InlineData("SFP-DD:2x50G/SFP56/50GBASE-SR", "50GBASE-SR")]
    [InlineData("QSFP-DD:8x50G/QSFP28/100GBASE-LR4", "100GBASE-LR4")] // lanes 1 to 4 of the cage
    [InlineData("QSFP-DD:8x50G/QSFP56/200GBASE-FR4", "200GBASE-FR4")]
    [InlineData("QSFP56:4x50G/QSFP28/100GBASE-SR4", "100GBASE-SR4")]
    [InlineData("SFP112:1x100G/SFP112/100GBASE-DR", "100GBASE-DR")] // four levels on the host's lane: the code is the host's
    [InlineData("SFP+/10GBASE-T", "RJ45/10GBASE-T")]
    [InlineData("CFP2/100GBASE-SR10", "100GBASE-SR10")] // ten lanes of 10G on both sides
    public void Works(string a, string b) => Assert.Equal(MatingVerdict.Works, Verdict(a, b));

    [Theory]
    [InlineData("400GBASE-DR4", "100GBASE-DR", "4x100G", "500 m")] // an overview page of 400G types states the split (seen)
    [InlineData("400GBASE-DR4", "100GBASE-FR1", "4x100G", "500 m")]
    [InlineData("400GBASE-DR4-2", "100GBASE-FR1", "4x100G", "2000 m")]
    [InlineData("400GBASE-DR4", "400GBASE-DR4-2", "500 m")]
    [InlineData("100GBASE-DR", "100GBASE-FR1", "500 m")]
    [InlineData("100GBASE-FR1", "100GBASE-LR1", "2000 m", "0.8 dB")]
    [InlineData("100GBASE-DR", "100GBASE-LR1", "500 m", "0.8 dB")] // LR1 launches up to +4.8 dBm into +4.0 dBm
    [InlineData("400GBASE-FR4", "400GBASE-LR4-6", "2000 m")]
    [InlineData("400GBASE-FR4", "400G-LR4-10", "2000 m", "1.6 dB")]
    [InlineData("2x400G-FR4", "400GBASE-FR4", "2x400G")]
    [InlineData("100G-CWDM4", "100G-4WDM-10", "2000 m")] // data page of a 4WDM-10 module (seen)
    [InlineData("100GBASE-LR4", "100GBASE-ER4", "10000 m")]
    [InlineData("100GBASE-LR4", "100G-4WDM-20", "RS(528,514)")]
    [InlineData("400GBASE-SR4", "400GBASE-VR4", "50 m")]
    [InlineData("800GBASE-DR8", "400GBASE-DR4", "2x400G")]
    [InlineData("800GBASE-DR8", "100GBASE-DR", "8x100G")]
    [InlineData("400GBASE-SR8", "50GBASE-SR", "8x50G")]
    [InlineData("400GBASE-SR8", "100GBASE-SR2", "4x100G")]
    [InlineData("400GBASE-SR8", "200GBASE-SR4", "2x200G")]
    [InlineData("400GBASE-SR4", "100GBASE-SR1", "4x100G")]
    [InlineData("100GBASE-SR4", "25GBASE-SR", "4x25G")]
    [InlineData("QSFP28:4x25G/QSFP28/100GBASE-DR", "100GBASE-DR", "code off")]
    [InlineData("QSFP-DD:8x50G/QSFP+/40GBASE-SR4", "40GBASE-SR4", "10.3125")] // common practice
    [InlineData("OSFP:8x100G/QSFP112/400GBASE-DR4", "400GBASE-DR4", "adapter")] // adapter overview page (seen)
    [InlineData("QSFP28:4x25G/SFP28/25GBASE-SR", "25GBASE-SR", "adapter")]
    [InlineData("40GBASE-ER4", "40GBASE-ER4", "9 dB")]
    [InlineData("40GBASE-ER4", "40GBASE-LR4", "7.5 dB")] // the budget of that direction is larger than the channel loss of LR4
    [InlineData("400GBASE-SR4.2", "400G-BD4.2", "not known")] // the MSA type's levels are not known here
    [InlineData("400G-CR8-consortium", "200GBASE-CR4", "2x200G")]
    [InlineData("40GBASE-LR4", "40GBASE-ER4", "7.5 dB")] // IEEE 802.3 clause 87: +3.5 dBm of OMA into -4.0 dBm (memory)
    [InlineData("100GBASE-ZR", "100GBASE-ZR", "one channel", "levels")] // tunable; engineered by its signal to noise ratio
    [InlineData("100GBASE-LR4", "100G-4WDM-40", "RS(528,514)", "8 dB")] // +4.5 dBm into a receiver rated -3.5 dBm (weak)
    [InlineData("QSFP112:4x100G/QSFP112/100GBASE-DR", "100GBASE-DR", "the host runs RS(544,514)")]
    [InlineData("QSFP-DD:8x50G/QSFP-DD/100GBASE-DR", "100GBASE-DR", "the host runs RS(544,514)")]
    [InlineData("QSFP56:4x50G/QSFP56/100GBASE-SR2", "100GBASE-SR2", "the host runs RS(544,514) on 100GAUI-2")]
    [InlineData("QSFP-DD:8x50G/QSFP28/100GBASE-DR", "100GBASE-DR", "code off")]
    [InlineData("QSFP28/100GBASE-FR1", "100GBASE-FR1", "code off")]
    [InlineData("QSFP-DD800:8x100G/QSFP112/400GBASE-DR4", "400GBASE-DR4", "two ports")] // four-lane module in a twin-port cage (seen)
    [InlineData("OSFP:8x100G/QSFP28/100GBASE-LR4", "100GBASE-LR4", "adapter")]
    [InlineData("QSFP56:4x50G/QSFP112/200GBASE-SR4", "200GBASE-SR4", "slower lanes")] // seats; runs only at a rate the host has
    [InlineData("QSFP28:4x25G/QSFP56/100GBASE-SR4", "100GBASE-SR4", "slower lanes")]
    [InlineData("SFP+:1x10G/SFP28/10GBASE-SR", "10GBASE-SR", "slower lanes")] // links at 10G only if made for both rates
    [InlineData("SFP28:1x25G/SFP+/10GBASE-SR", "10GBASE-SR", "port group")]
    [InlineData("QSFP112:4x100G/QSFP28/100GBASE-LR4", "100GBASE-LR4", "NRZ depends")]
    [InlineData("QSFP28:4x25G/SFP+/10GBASE-LR", "10GBASE-LR", "adapter")]
    [InlineData("QSFP112:4x100G/SFP56/50GBASE-SR", "50GBASE-SR", "adapter")]
    public void Conditional(string a, string b, params string[] words)
    {
        var answer = Answer(a, b);
        Assert.True(answer.Verdict == MatingVerdict.Conditional, string.Join("; ", answer.Reasons.Select(r => r.Text)));
        foreach (var word in words) Assert.Contains(answer.Conditions, c => c.Contains(word, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("400GBASE-FR4", "100G-CWDM4", "LW2203")] // 53.125 GBd PAM4 against 25.78125 GBd NRZ
    [InlineData("400GBASE-FR4", "100GBASE-FR1", "LW2108")] // wavelengths share the fibre (seen)
    [InlineData("400GBASE-FR4", "100GBASE-DR", "LW2108")]
    [InlineData("100G-CWDM4", "100GBASE-LR4", "LW2205")] // 20 nm grid against 800 GHz grid (grids seen)
    [InlineData("100GBASE-SR4", "100GBASE-SR10", "LW2202")]
    [InlineData("100GBASE-SR4", "100GBASE-SR2", "LW2202")]
    [InlineData("100GBASE-SR4", "100GBASE-SR1", "LW2203")]
    [InlineData("400GBASE-SR8", "400GBASE-SR4.2", "LW2205")] // eight lanes of one colour against four pairs of two (seen)
    [InlineData("400GBASE-SR8", "400GBASE-SR4", "LW2203")]
    [InlineData("400GBASE-SR4", "400GBASE-SR4.2", "LW2203")]
    [InlineData("800GBASE-DR4", "400GBASE-DR4", "LW2203")] // 106.25 against 53.125 GBd (seen)
    [InlineData("200GBASE-DR1", "200GBASE-DR1-2", "LW2203")] // 106.25 against 113.4375 GBd (seen)
    [InlineData("400GBASE-LR8", "400G-LR4-10", "LW2202")]
    [InlineData("400GBASE-DR4", "400GBASE-SR4", "LW2201")]
    [InlineData("400GBASE-DR4", "400GBASE-CR4", "LW2201")]
    [InlineData("10GBASE-T", "1000BASE-T", "LW2204")]
    [InlineData("10GBASE-T", "10GSFP+Cu", "LW2201")]
    [InlineData("100GBASE-ZR", "100GBASE-LR1", "LW2204")]
    [InlineData("50GBASE-CR", "50GBASE-CR2-consortium", "LW2202")]
    [InlineData("100GBASE-CR2", "100GBASE-CR4", "LW2203")]
    [InlineData("QSFP28:4x25G/QSFP-DD/400GBASE-DR4", "400GBASE-DR4", "LW2101")]
    [InlineData("QSFP112:4x100G/QSFP-DD/400GBASE-DR4", "400GBASE-DR4", "LW2101")]
    [InlineData("QSFP-DD:8x50G/OSFP/400GBASE-DR4", "400GBASE-DR4", "LW2101")]
    [InlineData("OSFP-RHS:4x100G/OSFP/400GBASE-DR4", "400GBASE-DR4", "LW2101")] // finned top in a flat-top cage (seen)
    // +2.4 dBm into a receiver rated -1.0 dBm ask for 3.4 dB, and the channel may lose 1.9 dB at most (clauses 52 and 86, seen and memory).
    [InlineData("40GBASE-SR4", "10GBASE-SR", "LW2409")]
    [InlineData("100GBASE-SR10", "10GBASE-SR", "LW2409")]
    [InlineData("OSFP:8x100G/OSFP-RHS/400GBASE-DR4", "400GBASE-DR4", "LW2101")]
    [InlineData("SFP28:1x25G/SFP-DD/25GBASE-SR", "25GBASE-SR", "LW2101")]
    [InlineData("SFP+:1x10G/SFP28/25GBASE-SR", "25GBASE-SR", "LW2107")] // fits, but no such lane
    [InlineData("QSFP28/400GBASE-DR4", "400GBASE-DR4", "LW2107")]
    [InlineData("QSFP28:4x25G/QSFP56/200GBASE-SR4", "200GBASE-SR4", "LW2107")]
    [InlineData("QSFP-DD:8x50G/QSFP-DD800/800GBASE-DR8", "800GBASE-DR8", "LW2107")]
    [InlineData("QSFP56:4x50G/QSFP-DD/400GBASE-DR4", "400GBASE-DR4", "LW2101")] // second row of contacts, deeper body
    [InlineData("OSFP:8x100G/QSFP-DD/400GBASE-DR4", "400GBASE-DR4", "LW2101")] // only the one-row bodies have an adapter
    [InlineData("QSFP28:4x25G/QSFP112/400GBASE-DR4", "400GBASE-DR4", "LW2107")]
    [InlineData("QSFP112:4x100G/QSFP112/400GBASE-SR8", "400GBASE-SR8", "LW2110")] // reverse gearboxes stand on boards
    [InlineData("QSFP112:4x100G/QSFP112/400GBASE-LR8", "400GBASE-LR8", "LW2110")]
    [InlineData("SFP112:1x100G/SFP112/100GBASE-SR4", "100GBASE-SR4", "LW2110")]
    [InlineData("QSFP112:4x100G/QSFP112/100GBASE-LR4", "100GBASE-LR4", "LW2110")] // a QSFP112 body speaks four levels only
    [InlineData("QSFP28:2x50G/QSFP28/100GBASE-SR4", "100GBASE-SR4", "LW2107")] // a QSFP28 body speaks two levels only
    [InlineData("QSFP-DD:8x50G/QSFP-DD/400GBASE-SR16", "400GBASE-SR16", "LW2110")]
    [InlineData("QSFP28:4x25G/QSFP28/100GBASE-SR2", "100GBASE-SR2", "LW2110")] // nobody makes the code for two lanes
    [InlineData("QSFP28:4x25G/QSFP28/50GBASE-SR", "50GBASE-SR", "LW2107")] // 50G there are two lanes of two levels
    public void Never(string a, string b, string code)
    {
        var answer = Answer(a, b);
        Assert.Equal(MatingVerdict.Never, answer.Verdict);
        Assert.Contains(code, answer.Reasons.Select(r => CheckCodes.Of(r.CheckName)?.Code));
        Assert.Empty(answer.Conditions);
    }

    [Theory]
    [InlineData("1.6TBASE-DR8", "800GBASE-DR4")]
    [InlineData("400GBASE-DR4", "100GBASE-DR")]
    public void FanOut_IsWrittenWithoutStrayBlanks(string a, string b)
    {
        Assert.Contains(Answer(a, b).Conditions, c => c.StartsWith("a fan-out from ", StringComparison.Ordinal));
        Assert.DoesNotContain(Answer(a, b).Conditions, c => c.Contains(" ,", StringComparison.Ordinal));
        Assert.DoesNotContain(Answer(a, b).Conditions, c => c.Contains("  ", StringComparison.Ordinal));
    }

    // Two whole links in one module have a plain cord each; what is not known of an end is left out of the sentence.
    [Fact]
    public void FanOut_IsAskedForOnlyWhereFibresPart()
    {
        Assert.DoesNotContain(Answer("2x400G-FR4", "400GBASE-FR4").Conditions, c => c.Contains("fan-out", StringComparison.Ordinal));
        var apart = Answer("400GBASE-DR2", "200GBASE-DR1").Conditions;
        Assert.Contains(apart, c => c.Contains("to 2 x LC-duplex, lane", StringComparison.Ordinal));
    }

    // Source: the splits that the reference rows of each type name, from its clause or its agreement (memory).
    [Theory]
    [MemberData(nameof(Splits))]
    public void Split_OfEachTypeIsOffered(string wide, string narrow, string mode)
    {
        var answer = Answer(wide, narrow);
        if (TooBright.Contains((wide, narrow)))
        {
            Assert.Equal([CheckNames.Overload], answer.Reasons.Select(r => r.CheckName));
            return;
        }
        Assert.True(answer.Verdict == MatingVerdict.Conditional, string.Join("; ", answer.Reasons.Select(r => r.Text)));
        Assert.Contains(answer.Conditions, c => c.Contains($"breakout {mode}", StringComparison.Ordinal));
    }

    /// <summary>Splits that the rows name and that the levels of both clauses rule out: +2.4 dBm into -1.0 dBm needs more loss than
    /// either channel may have.</summary>
    private static readonly (string Wide, string Narrow)[] TooBright = [("40GBASE-SR4", "10GBASE-SR"), ("100GBASE-SR10", "10GBASE-SR")];

    public static TheoryData<string, string, string> Splits()
    {
        var splits = new TheoryData<string, string, string>();
        foreach (var type in StandardsLibrary.Shipped.InterfaceTypes)
        {
            foreach (var partner in type.Sheet.Words("breakout-partners"))
            {
                var x = partner.IndexOf('x', StringComparison.Ordinal);
                var narrow = StandardsLibrary.Shipped.Interface(partner[(x + 1)..])!;
                splits.Add(type.Name, narrow.Name, $"{partner[..x]}x{narrow.Rate}");
            }
        }
        return splits;
    }

    [Theory]
    [MemberData(nameof(SomePairs))]
    public void Verdict_IsTheSameFromBothEnds(string a, string b)
    {
        Assert.Equal(Verdict(a, b), Verdict(b, a));
        Assert.Equal(Reasons(a, b), Reasons(b, a));

        static IEnumerable<string> Reasons(string one, string other) =>
            Answer(one, other).Reasons.Select(r => r.CheckName).Distinct().Order();
    }

    public static TheoryData<string, string> SomePairs()
    {
        var optical = StandardsLibrary.Shipped.InterfaceTypes.Select(t => t.Name);
        var names = optical.Concat(StandardsLibrary.Shipped.CopperTypes.Select(t => t.Name)).ToList();
        var random = new Random(7);
        var pairs = new TheoryData<string, string>();
        for (var i = 0; i < 150; i++) pairs.Add(names[random.Next(names.Count)], names[random.Next(names.Count)]);
        return pairs;
    }

    [Theory]
    [InlineData("400GBASE-DR4", "100GBASE-DR", "OS2", 500, MatingVerdict.Conditional)]
    [InlineData("400GBASE-DR4", "100GBASE-DR", "OS2", 600, MatingVerdict.Never)]
    [InlineData("400GBASE-DR4", "400GBASE-DR4", "OM4", 100, MatingVerdict.Never)]
    [InlineData("400GBASE-SR8", "400GBASE-SR8", "OM3", 70, MatingVerdict.Works)]
    [InlineData("400GBASE-SR8", "400GBASE-SR8", "OM3", 71, MatingVerdict.Never)]
    [InlineData("400GBASE-SR8", "400GBASE-SR8", "OM4", 100, MatingVerdict.Works)]
    public void Way_IsHeldAgainstTheTypes(string a, string b, string fibre, double metres, MatingVerdict expected)
    {
        var way = new MatingWay(StandardsLibrary.Shipped.Fibre(fibre), Length.FromMetres(metres));
        Assert.Equal(expected, Lanewright.Engineering.Mating.Mating.Of(StandardsLibrary.Shipped, End(a), End(b), way).Verdict);
    }

    private static MatingVerdict Verdict(string a, string b) => Answer(a, b).Verdict;

    private static MatingAnswer Answer(string a, string b) =>
        Lanewright.Engineering.Mating.Mating.Of(StandardsLibrary.Shipped, End(a), End(b), MatingWay.Unknown);

    private static Lanewright.Model.Links.PortDescription End(string text) =>
        PortDescriptionReader.TryRead(text, StandardsLibrary.Shipped, out var end, out var problem)
            ? end
            : throw new ArgumentException(problem);
}
