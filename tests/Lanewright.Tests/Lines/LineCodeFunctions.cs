using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Lines;

/// <summary>What the functions about codes, levels and whole combs named in the cases are in this program.</summary>
internal static class LineCodeFunctions
{
    private static readonly StandardsLibrary Standards = StandardsLibrary.Shipped;

    public static double? Of(string function, JsonElement[] a)
    {
        double At(int i) => a[i].GetDouble();
        return function switch
        {
            "q_to_ber" => LevelErrors.OfTwo(At(0)),
            "pam4_q_for_ser" => LevelErrors.QualityForSymbolsOfFour(At(0)),
            "pam4_ber" => LevelErrors.OfFour(At(0)),
            "rs_cer" => Code(a).Codewords(At(0)),
            "rs_post_ber" => Code(a).Bits(At(0)),
            "ber_for_cer" => Code(a).BitErrorsFor(At(0)),
            "flr_from_cer" => ReedSolomonCode.Frames(At(0), At(1), a.Length > 2 ? a[2].GetInt32() : 1),
            "flr_from_random_ber" => ReedSolomonCode.FramesUncoded(At(0), At(1)),
            "ber_16qam_exact" => Exact(At(0)),
            "osnr58_db" => Rule(At(0), At(1), At(2), At(3)),
            "gn_nyquist_psd" => WholeComb(At(0), At(1), At(2), At(3), At(4) * At(4), At(5)),
            "gn_wdm_psd" => WholeComb(At(0), At(1), At(2), At(3), At(4) * At(4) * Math.Pow(At(6), 2 * At(4) / At(5)), At(7)),
            _ => null,
        };
    }

    /// <summary>Gray-coded 16QAM with all its error terms. The program takes the first alone, which is within a thousandth where codes
    /// work.</summary>
    public static double Exact(double ratio)
    {
        var step = Math.Sqrt(ratio / 10);
        double Erfc(double x) => MathNet.Numerics.SpecialFunctions.Erfc(x);
        return (3.0 / 8 * Erfc(step)) + (1.0 / 4 * Erfc(3 * step)) - (1.0 / 8 * Erfc(5 * step));
    }

    /// <summary>The rule of thumb: launch less span loss and noise figure and 58 dB, less the number of spans. The program reckons the
    /// exact form; one of its stages at high gain is what the rule stands for.</summary>
    public static double Rule(double launch, double loss, double figure, double spans) =>
        58 + launch - loss - figure - (10 * Math.Log10(spans));

    /// <summary>Density of nonlinear noise in the middle of a comb that fills a band, or of one with gaps, by the closed form of the
    /// papers; the program sums over channels instead.</summary>
    public static double WholeComb(double gamma, double beta2, double alpha, double length, double width2, double density)
    {
        var glass = new GlassSpan(Attenuation.FromDecibelsPerKilometre(alpha * 1e4 / Math.Log(10)), Length.FromMetres(length),
            DispersionRate.From(17), 0.067, gamma * 1000, GlassSpan.Usual);
        var reach = Math.Abs(beta2) / alpha;
        var effective = glass.Effective.Metres;
        return 8.0 / 27 * gamma * gamma * density * density * density * effective * effective
            * Math.Asinh(Math.PI * Math.PI / 2 * reach * width2) / (Math.PI * reach);
    }

    private static ReedSolomonCode Code(JsonElement[] a) =>
        ReedSolomonCode.Find(Standards, a.Length > 1 && a[1].GetInt32() == 528 ? "RS(528,514)" : "RS(544,514)")!;
}
