using System.Text.Json;

namespace Lanewright.Tests.Cli;

/// <summary>The line and grid commands as their callers see them.</summary>
public sealed class LineCommandTests
{
    private const string Line = "line --length 80km --type 400ZR --channels 8 --spacing 100GHz --loss 0.22dB/km "
        + "--booster 5.5dB --preamp 5.5dB --mux 5.5dB --launch -2dBm";

    [Fact]
    public void Json_HasTheAgreedShape()
    {
        using var json = Json(Line + " --json --sweep launch", 0);
        var root = json.RootElement;
        Assert.Equal("pass", root.GetProperty("verdict").GetString());
        Assert.Equal("coherent-booster-preamplifier", root.GetProperty("scheme").GetString());
        Assert.NotEmpty(root.GetProperty("mark").GetString()!);
        var channels = root.GetProperty("channels").EnumerateArray().ToList();
        Assert.Equal(8, channels.Count);
        foreach (var channel in channels)
        {
            foreach (var key in new[]
                { "frequencyThz", "wavelengthNm", "rxPowerDbm", "osnrDb", "gsnrDb", "requiredOsnrDb", "marginDb", "dispersionPsNm" })
                Assert.Equal(JsonValueKind.Number, channel.GetProperty(key).ValueKind);
            var product = channel.GetProperty("frequencyThz").GetDouble() * channel.GetProperty("wavelengthNm").GetDouble();
            Assert.Equal(299792.458, product, 0.01);
        }
        // 80 km at 1.468 / c (textbook, memory).
        Assert.Equal(391.738, root.GetProperty("latencyUs").GetDouble(), 0.01);
        Assert.NotEmpty(root.GetProperty("checks").EnumerateArray());
        var tried = root.GetProperty("tried").EnumerateArray().ToList();
        Assert.Equal(7, tried.Count);
        Assert.All(tried, t => Assert.NotEmpty(t.GetProperty("reason").GetString()!));
        Assert.Equal(33, root.GetProperty("sweep").GetProperty("points").GetArrayLength());
    }

    // What cannot be proved is told as an error of the plan too.
    [Theory]
    [InlineData("400ZR", 0)]
    [InlineData("800ZR", 1)]
    public void WhatIsUnproven_IsNoSuccess(string type, int code)
    {
        using var json = Json($"line --length 80km --type {type} --channels 8 --json", code);
        Assert.Equal(code == 0 ? "pass" : "unproven", json.RootElement.GetProperty("verdict").GetString());
    }

    // Source: RS(544,514) loses 8.152e-13 of its codewords at 2.4e-4, and four levels make that at a quality of 3.414, the standard's own
    // (an independent reference calculation; derived); a frame of 64 octets is lost without a code with 512 times the share of wrong bits
    // (802.3 task-force mail: 5.12e-10 at 1e-12).
    [Fact]
    public void Fec_TellsTheErrorsThatLoseSoManyCodewords()
    {
        using var json = Json("fec RS(544,514) --codewords 8.1e-13 --json", 0);
        Assert.Equal(2.4e-4, json.RootElement.GetProperty("preFecErrorRatio").GetDouble(), 5e-7);
        Assert.Equal(3.414, json.RootElement.GetProperty("qualityPam4").GetDouble(), 0.001);
        using var few = Json("fec RS(544,514) --ber 1e-12 --json", 0);
        Assert.Equal(5.12e-10, few.RootElement.GetProperty("frameLossRatioUncoded").GetDouble(), 5e-13);
    }

    // Source: the channel plans of OIF 400ZR, read in a book: 48 channels from 196.1 down to 191.4 THz; 64 from 196.1 to 191.375 THz.
    [Theory]
    [InlineData("100GHz", 48, 191.4, -17)]
    [InlineData("75GHz", 64, 191.375, -69)]
    public void Grid_IsThatOfTheAgreement(string spacing, int count, double lowest, int number)
    {
        using var json = Json($"grid --spacing {spacing} --json", 0);
        var channels = json.RootElement.GetProperty("channels").EnumerateArray().ToList();
        Assert.Equal(count, channels.Count);
        Assert.Equal(196.1, channels[0].GetProperty("frequencyThz").GetDouble(), 1e-9);
        Assert.Equal(lowest, channels[^1].GetProperty("frequencyThz").GetDouble(), 1e-9);
        Assert.Equal(number, channels[^1].GetProperty("n").GetInt32());
    }

    [Theory]
    [InlineData("line --length 80km")]
    [InlineData("line examples/kestrel-bay --type 400ZR")]
    [InlineData("line --length 80km --type 400ZR --loss 0.1dB/km")]
    [InlineData("line --length 80km --type 400ZR --measured-loss 0.5dB")]
    [InlineData("line --length 80km --type 400ZR --connectors 2000000000")]
    [InlineData("grid --cwdm --channels 4")]
    [InlineData("line examples/kestrel-bay --launch -2dBm")]
    [InlineData("fec 400ZR --codewords 1e-15")]
    [InlineData("fec RS(544,514) --codewords 0")]
    [InlineData("fec RS(544,514) --codewords 1e-15 --ber 1e-4")]
    [InlineData("line --length 80km --type 400ZS")]
    [InlineData("line --length 80 --type 400ZR")]
    [InlineData("line --length 0km --type 400ZR")]
    [InlineData("line --length 80km --type 400ZR --loss 0dB/km")]
    [InlineData("line --length 80km --type 400ZR --channels 0")]
    [InlineData("line --length 80km --type 400ZR --channels 49")]
    [InlineData("line --length 80km --type 400ZR --booster loud")]
    [InlineData("line --length 80km --type 400ZR --launch 1e9dBm")]
    [InlineData("line --length 80km --type 400ZR --sweep colour")]
    [InlineData("line --length 80km --type 400ZR --dispersion 0ps/nm/km")]
    [InlineData("line --length 80km --type 400ZR --measured-loss 0dB")]
    [InlineData("grid --spacing 0GHz")]
    [InlineData("grid --first 300THz")]
    [InlineData("grid --first 193.101THz")]
    public void CannotRunWithTwoAndSaysWhy(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error + run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("line --length 1m --type 400ZR --channels 48", 0)]
    [InlineData("line --length 20000km --type 400ZR --channels 48", 1)]
    [InlineData("line --length 80km --type 400ZR --booster no --preamp no --inline no", 1)]
    [InlineData("line --length 80km --rate 1.6T", 1)]
    [InlineData("line --length 30km --type 400ZR", 0)]
    [InlineData("grid --cwdm", 0)]
    public void AnswersWithoutATrace(string arguments, int code)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code == code, $"{run.Code}: {run.Error}{run.Output}");
        Assert.DoesNotContain("   at ", run.Error + run.Output, StringComparison.Ordinal);
    }

    // A line that could not be read, or that rules find at fault, is no line that passes, however the rest may be.
    [Theory]
    [InlineData("good: { from: a, to: b, type: 400ZR }, lost: { from: a, to: b }", "1 error")]
    [InlineData("late: { from: a, to: b, type: 400ZR, latency: 100 us }", "1 error")]
    [InlineData("five: { from: a, to: b, rate: 400G, channels: 5, scheme: grey }", "1 error")]
    public void PlanWithAFaultInItsLines_Fails(string lines, string counted)
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".yaml");
        File.WriteAllText(path, $$"""
            lanewright: 1
            sites: { a: {}, b: {} }
            spans: { s: { from: a, to: b, length: 30 km } }
            lines: { {{lines}} }
            """);
        try
        {
            using var json = Json($"line {path} --json", 1);
            Assert.Equal("fail", json.RootElement.GetProperty("verdict").GetString());
            Assert.Equal(counted, $"{json.RootElement.GetProperty("errors").GetInt32()} error");
            Assert.Contains(": error LW", Program.Run($"line {path}").Output, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    // Source: OIF-400ZR (as the notes quote it): a receiver bears -20 dBm only with 34 dB of signal over noise, else -12 dBm; at 40 km and
    // 8.8 dB the weakest transmitter of -10 dBm arrives with -18.8 dBm.
    [Theory]
    [InlineData("line --length 40km --type 400ZR --tx-osnr 34dB --json", "pass")]
    [InlineData("line --length 40km --type 400ZR --tx-osnr 30dB --booster no --preamp no --inline no --json", "fail")]
    public void UnamplifiedReceiver_NeedsALowNoiseTransmitterForWeakLight(string arguments, string verdict)
    {
        using var json = JsonDocument.Parse(Program.Run(arguments).Output);
        var tried = json.RootElement.GetProperty("tried").EnumerateArray()
            .Single(t => t.GetProperty("scheme").GetString() == "coherent");
        Assert.Equal(verdict, tried.GetProperty("verdict").GetString());
    }

    // Worked by hand from the shipped type: the weakest transmitter of 10G-DWDM sends 0 dBm and the strongest 3 dBm; saying so of the
    // weakest changes nothing of the strongest, which decides over the pad.
    [Fact]
    public void StatedWeakestTransmitter_LeavesTheStrongest()
    {
        const string plain = "line --length 20km --type 10G-DWDM --json";
        using var own = Json(plain, 0);
        using var stated = Json(plain + " --tx 0dBm", 0);
        var pad = own.RootElement.GetProperty("receiverPadDb").GetDouble();
        Assert.True(pad > 0);
        Assert.Equal(pad, stated.RootElement.GetProperty("receiverPadDb").GetDouble());
    }

    // Source: tilt of a comb by stimulated Raman scattering grows with its power; 64 channels of 4.9 dBm tilt each stretch of 1500 km by
    // more than the 2 dB that amplifier practice levels (common practice).
    [Fact]
    public void TiltBeyondAmplifiers_Fails()
    {
        using var json = Json(
            "line --length 1500km --type ZR+-200G --channels 64 --spacing 75GHz --fibre G.654.E --launch 4.9dBm --json", 1);
        var tilt = json.RootElement.GetProperty("checks").EnumerateArray()
            .Single(c => c.GetProperty("name").GetString() == "amplifier-tilt");
        Assert.Equal("fail", tilt.GetProperty("verdict").GetString());
        Assert.True(tilt.GetProperty("value").GetDouble() > 2);
    }

    // Worked by hand: 96 transmitters of 0 dBm at the most behind a multiplexer of 5.5 dB are 14.3 dBm together, above the 10 dBm of
    // level 1
    // (IEC 60825-2 as the notes quote it).
    [Fact]
    public void LightOfAllChannels_IsWhatTheHintCounts()
    {
        using var json = Json("line --length 10km --type OR-100G-31.6GBd-QPSK --channels 96 --spacing 50GHz --json", 0);
        var light = json.RootElement.GetProperty("checks").EnumerateArray()
            .Single(c => c.GetProperty("name").GetString() == "fibre-light");
        Assert.Equal(0 - 5.5 + (10 * Math.Log10(96)), light.GetProperty("value").GetDouble(), 0.01);
        Assert.Contains("level 1M", json.RootElement.GetProperty("hazardHint").GetString(), StringComparison.Ordinal);
    }

    private static JsonDocument Json(string arguments, int code)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code == code, run.Error + run.Output);
        return JsonDocument.Parse(run.Output);
    }
}
