using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>What the functions named in the cases are in this program.</summary>
internal static class LineCaseFunctions
{
    private static readonly StandardsLibrary Standards = StandardsLibrary.Shipped;
    private static readonly Frequency Carrier = Frequency.FromTerahertz(193.4);
    private static readonly Frequency Noise = Frequency.FromGigahertz(12.5);

    public static double? Of(string function, JsonElement[] a)
    {
        double At(int i) => a[i].GetDouble();
        int Int(int i) => (int)a[i].GetDouble();
        return function switch
        {
            "dwdm_freq_thz" => Standards.Grid.Dense(Int(0), Frequency.FromGigahertz(At(1))).Terahertz,
            "flex_center_thz" => Standards.Grid.Flexible(Int(0)).Terahertz,
            "flex_slot_width_ghz" => Standards.Grid.SlotWidth(Int(0)).Gigahertz,
            "thz_to_nm" => Frequency.FromTerahertz(At(0)).Wavelength.Nanometres,
            "nm_to_thz" => Frequency.Of(Wavelength.FromNanometres(At(0))).Terahertz,
            "channel_count" => ChannelPlan.Room(Frequency.FromGigahertz(At(0)), Frequency.FromGigahertz(At(1))),
            "cwdm_nm" => Standards.Grid.Coarse(Int(0)).Nanometres,
            "parameter" => Parameter(a[0].GetString()!),
            "required_osnr_db" => Db(Symbols(a[0]).RatioFor(At(1))) + Wider(At(2)),
            "implied_impl_penalty_db" => At(0) - Db(Symbols(a[1]).RatioFor(At(2))) - Wider(At(3)),
            "transceiver_snr_db" => Db(Symbols(a[1]).OwnRatio(At(2), Plain(At(0) - Wider(At(3)))) ?? double.NaN),
            "snr_for_ber" => Db(Symbols(a[0]).RatioFor(At(1))),
            "ber_16qam" => new SymbolErrors(Standards.Symbols("16QAM")!).At(At(0)),
            "osnr_to_snr_db" => At(0) - Wider(At(1)),
            "shannon_snr_db" => ChannelBounds.Shannon(BitRate.FromGigabits(At(0) / 1e9), Frequency.FromHertz(At(1))).Value,
            "ber_at_gsnr" => Symbols(a[1]).At(1 / ((1 / Plain(At(0) - Wider(At(2)))) + (1 / Plain(At(3))))),
            "interp_penalty" => Penalty(a[0], At(1)),
            "inband_clearance_ghz" => ChannelBounds.Clearance(
                Frequency.FromGigahertz(At(0)), Baud.FromGigabaud(At(1)), At(2), Frequency.FromGigahertz(At(3))),
            "alpha_per_m" => Attenuation.FromDecibelsPerKilometre(At(0)).PerMetre,
            "beta2" => Glass(0.2, 80, At(0)).Beta2,
            "beta3" => (Glass(0.2, 80, At(0)) with { SlopePsNm2Km = At(1) }).Beta3,
            "leff_m" => Glass(At(0) * 1e4 / Math.Log(10), At(1) / 1000, 17).Effective.Metres,
            "maxwell_tail" => GroupDelay.Beyond(At(0)),
            "latency_us" => Latency(At(0)),
            "srs_tilt_db" => new RamanTilt(At(0), At(1), Length.FromKilometres(At(2)), Frequency.FromTerahertz(At(3))).Whole.Value,
            "srs_channel_gain_db" =>
                new RamanTilt(At(0), At(1), Length.FromKilometres(At(2)), Frequency.FromTerahertz(At(3))).At(At(4)).Value,
            _ => OfLines(function, a),
        };
    }

    private static double? OfLines(string function, JsonElement[] a)
    {
        double At(int i) => a[i].GetDouble();
        int Int(int i) => (int)a[i].GetDouble();
        return function switch
        {
            "p_ase_w" => AmplifierNoise.Watts(Decibels.From(At(0)), Decibels.From(At(1)),
                Carrier, a.Length > 3 ? Frequency.FromHertz(At(3)) : Noise),
            "osnr_amp_exact_db" =>
                AmplifierNoise.Over(PowerLevel.FromDbm(At(0)), Decibels.From(At(1)), Decibels.From(At(2)), Carrier, Noise).Value,
            "osnr_poly_db" => AmplifierNoise.ByMask((At(1), At(2), At(3), At(4)), PowerLevel.FromDbm(At(0))).Value,
            "nf_from_osnr_db" => AmplifierNoise.FigureOf(PowerLevel.FromDbm(At(0)), Decibels.From(At(1)), Carrier, Noise).Value,
            "total_power_dbm" => PowerLevel.FromDbm(At(0)).OfAll(Int(1)).Dbm,
            "per_channel_dbm" => PowerLevel.FromDbm(At(0)).OfEach(Int(1)).Dbm,
            "single_span[osnr_db]" => SpanCase.Of(a).Osnr,
            "single_span[rx_dbm]" => SpanCase.Of(a).Received,
            "eta_ggn" => Endless(
                Glass(At(3), At(4), At(5)) with { GammaPerWattKm = At(6) }, (Int(0), At(1), At(2)), c => c.Plain(Int(0) / 2)),
            "eta_isrs" => new RamanForm(
                    Glass(At(4), 1000, At(5)) with { SlopePsNm2Km = At(6), GammaPerWattKm = At(7) }, Int(0), Hz(At(1)), Hz(At(2)))
                .Of(Int(9), PowerLevel.FromDbm(At(3)), At(8)),
            "p_opt_w" => NonlinearNoise.BestWatts(At(0), At(1)),
            "snr_with_nli" => AmplifierNoise.Together(
                [Decibels.OfRatio(At(0) / At(1)), Decibels.OfRatio(1 / (At(2) * At(0) * At(0)))]).Ratio,
            "excess_kurtosis_qam" => Standards.SymbolSets.First(s => s.Bits == (int)Math.Log2(At(0) * At(0))).ExcessKurtosis?.Value,
            "eta_gn_db" => Db(Endless(Glass(0.2, 80, 17), (Int(0), 75e9, 60e9), c => c.Plain(Int(0) / 2))),
            "eta_single_span_format_db" => Db(Endless(Glass(0.2, 80, 17), (Int(0), 75e9, 60e9), c => c.Expected(Int(0) / 2, At(1)))),
            "ssfm_eta" => Db(Simulated(Int(1)).Expected(Int(1) / 2, a[0].GetString() == "gauss" ? 0 : Kurtosis(a[0]))),
            "cd_reach_km" => At(0) / DispersionRate.From(At(1)).PicosecondsPerNanometreKilometre,
            "nrz_cd_limit_ps_nm" => Standards.LineValue("intensity", "dispersion-rule").Value / (At(0) * At(0)),
            "sweep_max_km" => (At(1) - At(2)) / Attenuation.FromDecibelsPerKilometre(At(0)).DecibelsPerKilometre,
            "loss_budget" => (PowerLevel.FromDbm(At(0)) - PowerLevel.FromDbm(At(1))).Value,
            "link_loss_db" => LossOf(a),
            "repair_margin_db" => LineMargins.Repair(
                Length.FromKilometres(At(0)), At(1), At(2), Standards.LineValue("cut", "splices").Value, Decibels.From(0.1)).Value,
            _ => LineRouteFunctions.Of(function, a),
        };
    }

    private static double? Parameter(string name)
    {
        var words = name.Split(' ');
        double? Field(string type, string field) => Standards.Wavelength(type)?.Sheet.Real(field)?.Value;
        return name switch
        {
            "G.655 C-band dispersion low" => Standards.LineFibre("G.655")!.Sheet.Real("dispersion-low")?.Value,
            "G.655 C-band dispersion high" => Standards.LineFibre("G.655")!.DispersionMax?.Value.PicosecondsPerNanometreKilometre,
            "400ZR Tx power max" => Field("400ZR", "tx-max"),
            "400ZR Rx power max" => Field("400ZR", "rx-max"),
            "400ZR Rx power min when OSNR >= 34 dB (unamplified)" => Field("400ZR", "rx-min-high-osnr"),
            "400ZR instantaneous DGD max" => Field("400ZR", "dgd-max"),
            "400ZR channel frequency low" => Field("400ZR", "frequency-min"),
            "400ZR mean PMD tolerance at 0.5 dB penalty" => Field("400ZR", "pmd-max"),
            "400ZR laser frequency error" => Field("400ZR", "laser-error"),
            "800ZR symbol rate" => Field("800ZR", "baud"),
            "800ZR channel spacing" => Field("800ZR", "spacing-min"),
            _ when name.StartsWith("required OSNR", StringComparison.Ordinal) => Standards.WavelengthTypes.First(t =>
                t.Name.StartsWith($"OR-{words[2]}-", StringComparison.Ordinal) && t.Code == words[3] && t.Modulation == words[4])
                .RequiredOsnr?.Value.Value,
            _ => null,
        };
    }

    private static double Penalty(JsonElement steps, double value)
    {
        var read = steps.EnumerateArray().Select(s =>
            (s[0].GetDouble(), new Known<Decibels>(Decibels.From(s[1].GetDouble()), Citation.OfPlan)));
        return new PenaltySteps([.. read], IsFloor: false).At(value).Value;
    }

    private static double Latency(double kilometres) => (CoherentLine.LatencyOf(SpanCase.Question(kilometres))
        ?? throw new InvalidOperationException()).Value.Nanoseconds / 1000;

    /// <summary>Length, loss a kilometre, splices, loss of each, connectors, loss of each, ageing, repair.</summary>
    private static double LossOf(JsonElement[] a) => (SpanCase.Span(a[0].GetDouble(), a[1].GetDouble()) with
    {
        Splices = a[2].GetInt32(),
        SpliceLoss = new Known<Decibels>(Decibels.From(a[3].GetDouble()), Citation.OfPlan),
        Connectors = a[4].GetInt32(),
        ConnectorLoss = new Known<Decibels>(Decibels.From(a[5].GetDouble()), Citation.OfPlan),
        Ageing = Decibels.From(a[6].GetDouble()),
        Repair = Decibels.From(a[7].GetDouble()),
    }).Loss.Value;

    private static double Kurtosis(JsonElement symbols) =>
        Standards.Symbols(symbols.GetString()!.ToUpperInvariant())!.ExcessKurtosis!.Value.Value;

    /// <summary>The closed form as papers have it: the efficiency of mixing over the mismatch of phase as in endless glass, and of the span
    /// only its effective length. The program's own form differs by how a span ends, 0.15 dB at 80 km.</summary>
    private static double Endless(GlassSpan glass, (int Channels, double Spacing, double Width) comb, Func<NonlinearNoise, double> noise)
    {
        var endless = glass with { Length = Length.FromKilometres(10_000) };
        return noise(new NonlinearNoise(endless, comb.Channels, Hz(comb.Spacing), Hz(comb.Width)))
            * Math.Pow(glass.Effective.Metres / endless.Effective.Metres, 2);
    }

    private static NonlinearNoise Simulated(int channels) =>
        new(Glass(0.2, 80, 17), channels, Frequency.FromGigahertz(75), Frequency.FromGigahertz(60));

    private static GlassSpan Glass(double loss, double kilometres, double dispersion) => new(
        Attenuation.FromDecibelsPerKilometre(loss), Length.FromKilometres(kilometres), DispersionRate.From(dispersion), 0.067, 1.3,
        Wavelength.FromNanometres(1550));

    private static SymbolErrors Symbols(JsonElement name) => new(Standards.Symbols(name.GetString()!.ToUpperInvariant())!);

    private static Frequency Hz(double hertz) => Frequency.FromHertz(hertz);

    private static double Wider(double baud) => Db(baud / 12.5e9);

    private static double Db(double ratio) => 10 * Math.Log10(ratio);

    private static double Plain(double decibels) => Math.Pow(10, decibels / 10);
}
