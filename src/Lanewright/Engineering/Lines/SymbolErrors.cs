using MathNet.Numerics;

namespace Lanewright.Engineering.Lines;

/// <summary>Bit errors of Gray-coded symbols in Gaussian noise, before any code corrects them (Carena et al., JLT 30 (2012) 1524):
/// a factor and a divisor for each set of symbols.</summary>
/// <param name="Factor">Before the complementary error function.</param>
/// <param name="Divisor">Under the root, below the ratio of signal to noise.</param>
public sealed record SymbolErrors(double Factor, double Divisor)
{
    /// <summary>Four symbols.</summary>
    public static SymbolErrors Qpsk { get; } = new(1.0 / 2, 2);

    /// <summary>Eight symbols.</summary>
    public static SymbolErrors EightQam { get; } = new(2.0 / 3, 14.0 / 3);

    /// <summary>Sixteen symbols.</summary>
    public static SymbolErrors SixteenQam { get; } = new(3.0 / 8, 10);

    /// <summary>Sixty-four symbols.</summary>
    public static SymbolErrors SixtyFourQam { get; } = new(7.0 / 24, 42);

    /// <summary>Share of wrong bits at a plain ratio of signal to noise.</summary>
    public double At(double ratio) => Factor * SpecialFunctions.Erfc(Math.Sqrt(ratio / Divisor));

    /// <summary>The plain ratio that leaves just that share of wrong bits.</summary>
    public double RatioFor(double errors)
    {
        var root = SpecialFunctions.ErfcInv(errors / Factor);
        return root * root * Divisor;
    }

    /// <summary>The transceiver's own ratio of signal to noise that makes the ratio demanded by its specification out of theory's.</summary>
    public double OwnRatio(double errors, double specifiedRatio) => 1 / ((1 / RatioFor(errors)) - (1 / specifiedRatio));
}
