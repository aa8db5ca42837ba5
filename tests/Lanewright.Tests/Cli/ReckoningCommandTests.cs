using System.Text.Json;

namespace Lanewright.Tests.Cli;

/// <summary>Trays, spares and feeds without a plan, as the program prints them, against published figures; each names its source.</summary>
public sealed class ReckoningCommandTests
{
    // Source: a tray maker's 50 % fill chart (seen): TR-01, TR-04, TR-05 and TR-07 of the reference notes, inches.
    [Theory]
    [InlineData("2inx2in", "0.1852in", 74)]
    [InlineData("4inx4in", "0.21in", 230)]
    [InlineData("12inx2in", "0.1852in", 445)]
    [InlineData("16inx2in", "0.21in", 461)]
    // Source: own arithmetic on the seen limits, floor(W D f / (pi/4 od^2)) (derived).
    [InlineData("300mmx100mm", "3.0mm", 2122)]
    public void Tray_TakesWhatTheChartSays(string tray, string cable, int cables) =>
        Assert.Equal(cables, Answer($"fill --tray {tray} --cable {cable}").GetProperty("cablesAtMost").GetInt32());

    // Source: structured-cabling reference manual, tray sizing example (seen): 100 cables of 8 mm at 25 % want 20 096 mm2, with 0.785 for
    // a quarter of pi.
    [Fact]
    public void Tray_OfTheManual_IsAsLarge() => Assert.Equal(20_096 * (Math.PI / 4) / 0.785,
        Answer("fill --tray 300mmx100mm --cable 8mm --cables 100").GetProperty("areaPlannedMm2").GetDouble(), 1e-3);

    // Source: NEC chapter 9 table 1 (seen): 53 % for one cable, 31 % for two, 40 % for more. Two of 8 mm in 20 mm fill 32 %: too much,
    // though one of 12 mm fills 36 % and seven of 5 mm in 21 mm fill 39.7 %, which are none.
    [Theory]
    [InlineData("20mm", "12mm", 1, 0.36, true)]
    [InlineData("20mm", "8mm", 2, 0.32, false)]
    [InlineData("21mm", "5mm", 7, 0.396825, true)]
    [InlineData("21mm", "5mm", 8, 0.453515, false)]
    [InlineData("20mm", "21mm", 1, 1.1025, false)]
    public void Duct_IsHeldByTheNumberOfItsCables(string duct, string cable, int cables, double fill, bool holds)
    {
        var run = Program.Run($"fill --duct {duct} --cable {cable} --cables {cables} --json");
        var answer = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal((fill, holds, holds ? 0 : 1),
            (answer.GetProperty("fill").GetDouble(), answer.GetProperty("holds").GetBoolean(), run.Code));
    }

    // Two take less of a duct than one or three: of 8.1 mm in 20 mm one fills 16 %, two 33 % (over 31 %), three 49 % (over 40 %); of
    // 7 mm three fill 36.75 %.
    [Theory]
    [InlineData("8.1mm", 1)]
    [InlineData("7mm", 3)]
    [InlineData("15mm", 0)]
    public void Duct_TakesTheMostThatHasALimitForItself(string cable, int most) =>
        Assert.Equal(most, Answer($"fill --duct 20mm --cable {cable}").GetProperty("cablesAtMost").GetInt32());

    // Source: NEC chapter 9 table 1 note 2 (seen): three cables jam between 2.8 and 3.2 times their diameter.
    [Theory]
    [InlineData("2.75in", false)]
    [InlineData("2.8in", true)]
    [InlineData("3in", true)]
    [InlineData("3.2in", true)]
    [InlineData("3.25in", false)]
    public void Three_MayJam(string duct, bool mayJam) =>
        Assert.Equal(mayJam, Answer($"fill --duct {duct} --cable 1in --cables 3").GetProperty("mayJam").GetBoolean());

    // 5.88 is 2.8 times 2.1 and 16.32 3.2 times 5.1, whatever the last place of a quotient says.
    [Theory]
    [InlineData("5.88mm", "2.1mm")]
    [InlineData("16.32mm", "5.1mm")]
    public void Three_MayJamAtTheEndsOfTheRange(string duct, string cable) =>
        Assert.True(Answer($"fill --duct {duct} --cable {cable} --cables 3").GetProperty("mayJam").GetBoolean());

    // A cable of 20 mm does not go into a tray of 10 mm, however much of it would be left.
    [Fact]
    public void CableThatDoesNotEnter_HasNoRoom()
    {
        var answer = Answer("fill --tray 300mmx10mm --cable 20mm --cables 3");
        Assert.Equal((0, 0, false), (answer.GetProperty("cablesPlanned").GetInt32(), answer.GetProperty("cablesAtMost").GetInt32(),
            answer.GetProperty("holds").GetBoolean()));
    }

    // Source: binomial tail by hand: ten units of which each is down 0.02 x 4 / 8760 of the time, two or more at once 45 times that
    // squared (derived).
    [Fact]
    public void ShareOfTimeNearlyAll_IsNotRoundedToAll()
    {
        var down = 0.02 * 4 / 8760;
        var up = Answer("spares --units 10 --per-year 0.02 --needed 9").GetProperty("enoughUp").GetDouble();
        Assert.Equal(45 * down * down, 1 - up, 1e-12);
    }

    // Source: sparing procedures of two telecom equipment guides (seen): 100 units, 10 days, 99.9 %, 3 spares; convention F one less.
    [Theory]
    [InlineData(3619, 0.086856)]
    [InlineData(4523, 0.108552)]
    public void Spares_OfTwoGuides(int fit, double expected)
    {
        var answer = Answer($"spares --units 100 --fit {fit} --resupply 10d");
        Assert.Equal((expected, 3, 2), (answer.GetProperty("expectedUntilResupply").GetDouble(),
            answer.GetProperty("spareOnShelf").GetProperty("spares").GetInt32(),
            answer.GetProperty("neverShort").GetProperty("spares").GetInt32()));
    }

    // Source: spare-drive worked example (seen): 45 units of 200 000 h, 1.97 failures a year.
    [Fact]
    public void FailuresOfAYear_OfAWorkedExample() =>
        Assert.Equal(1.971, Answer("spares --units 45 --mtbf 200000h").GetProperty("perYear").GetDouble(), 5e-4);

    // A unit that fails once in 36.5 days and is away for 97.33 h works nine tenths of the time. Source: reliability handbook, three of
    // four displays of 0.9 (seen): 0.9477.
    [Fact]
    public void ThreeOfFour_OfAHandbook()
    {
        var answer = Answer("spares --units 4 --per-year 10 --needed 3 --repair 97.333333h");
        Assert.Equal(0.9, answer.GetProperty("up").GetDouble(), 1e-5);
        Assert.Equal(0.9477, answer.GetProperty("enoughUp").GetDouble(), 1e-4);
    }

    // Source: own example of the reference notes (derived): 6000 W on two feeds of 230 V behind 32 A, 26.09 A on the one that is left.
    // Source: three-phase formula (seen): 208 V and 24 A are 8646.4 VA, on outlets of either kind.
    [Theory]
    [InlineData("--load 6kW --volts 230V --breaker 32A", 26.087, 25.6, false)]
    [InlineData("--load 5888W --volts 230V --breaker 32A", 25.6, 25.6, true)]
    [InlineData("--load 8646W --volts 208V --phases 3 --breaker 30A", 23.999, 24, true)]
    [InlineData("--load 8646W --volts 208V --phases 3 --phase-to-phase --breaker 30A", 23.999, 24, true)]
    [InlineData("--load 8.7kW --volts 208V --phases 3 --breaker 30A", 24.149, 24, false)]
    [InlineData("--load 8.7kW --volts 208V --phases 3 --breaker 30A --full-rated", 24.149, 30, true)]
    public void Feed_CarriesAllWhenTheOtherIsLost(string question, double amperes, double limit, bool bears)
    {
        var run = Program.Run($"feed {question} --power-factor 100% --json");
        var answer = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal(amperes, answer.GetProperty("amperesAfterLoss").GetDouble(), 1e-3);
        Assert.Equal(amperes / 2, answer.GetProperty("amperes").GetDouble(), 1e-3);
        Assert.Equal((limit, bears, bears ? 0 : 1),
            (answer.GetProperty("limitAmperes").GetDouble(), answer.GetProperty("bears").GetBoolean(), run.Code));
    }

    // Source: a published environmental sheet (seen): 7138 W are 24 356 BTU/h; ASHRAE class A2 at 1500 m, 33 C (seen: 35 C less one per
    // 300 m above 900 m); International Standard Atmosphere (memory): 1.058 kg/m3 there.
    [Fact]
    public void Heat_OfAPublishedSheet()
    {
        var answer = Answer("feed --load 7138W --volts 230V --breaker 63A --altitude 1500m --air-class A2");
        Assert.Equal(24_356, answer.GetProperty("btuAnHour").GetDouble(), 0.5);
        Assert.Equal(33, answer.GetProperty("inletAllowableHighC").GetDouble(), 1e-6);
        Assert.Equal(1.058, answer.GetProperty("airDensityKgM3").GetDouble(), 5e-4);
    }

    // Words instead of a stack trace, and each names the option to mend.
    [Theory]
    [InlineData("fill --cable 5mm", "--tray")]
    [InlineData("fill --tray 300mm --cable 5mm", "--tray")]
    [InlineData("fill --tray 300mmx-1mm --cable 5mm", "--tray")]
    [InlineData("fill --tray 300mmx100mm --duct 20mm --cable 5mm", "--duct")]
    [InlineData("fill --duct 0mm --cable 5mm", "--duct")]
    [InlineData("fill --duct 20mm --cable 5", "--cable")]
    [InlineData("fill --duct 20mm --cable 5mm --cables 0", "--cables")]
    [InlineData("spares --units 4", "--fit")]
    [InlineData("spares --units 4 --fit 1 --mtbf 3h", "--mtbf")]
    [InlineData("spares --units 0 --fit 1", "--units")]
    [InlineData("spares --units 4 --fit -1", "--fit")]
    [InlineData("spares --units 4 --mtbf 0h", "--mtbf")]
    [InlineData("spares --units 4 --fit 1 --confidence 100%", "--confidence")]
    [InlineData("spares --units 4 --fit 1 --needed 5", "--needed")]
    [InlineData("spares --units 4 --fit 1 --resupply 10", "--resupply")]
    [InlineData("feed --load 6 --volts 230V --breaker 32A", "--load")]
    [InlineData("feed --load 6kW --volts 0V --breaker 32A", "--volts")]
    [InlineData("feed --load 6kW --volts 230V --breaker 32A --phases 2", "--phases")]
    [InlineData("feed --load 6kW --volts 230V --breaker 32A --phase-to-phase", "--phase-to-phase")]
    [InlineData("feed --load 6kW --volts 230V --breaker 32A --power-factor 120%", "--power-factor")]
    [InlineData("feed --load 6kW --volts 230V --breaker 32A --air-class B1", "--air-class")]
    [InlineData("feed --load 6kW --volts 230V --breaker 32A --air-class A1 --altitude 3100m", "A1")]
    public void Nonsense_IsRefusedInWords(string arguments, string word)
    {
        var run = Program.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.Contains(word, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    private static JsonElement Answer(string arguments) => JsonDocument.Parse(Program.Run(arguments + " --json").Output).RootElement;
}
