using Lanewright.Standards;
using MathNet.Numerics;

namespace Lanewright.Engineering.Lines;

/// <summary>Bit errors of Gray-coded symbols in Gaussian noise, before any code corrects them.</summary>
/// <param name="Symbols">The symbols.</param>
public sealed record SymbolErrors(SymbolSet Symbols)
{
    /// <summary>Share of wrong bits at a plain ratio of signal to noise.</summary>
    public double At(double ratio) =>
        Symbols.ErrorFactor.Value * SpecialFunctions.Erfc(Math.Sqrt(ratio / Symbols.ErrorDivisor.Value));

    /// <summary>The plain ratio that leaves just that share of wrong bits.</summary>
    public double RatioFor(double errors)
    {
        var root = SpecialFunctions.ErfcInv(errors / Symbols.ErrorFactor.Value);
        return root * root * Symbols.ErrorDivisor.Value;
    }

    /// <summary>The transceiver's own ratio of signal to noise that makes the ratio demanded by its specification out of theory's; null
    /// when the specification asks for no more than theory.</summary>
    public double? OwnRatio(double errors, double specifiedRatio)
    {
        var needed = RatioFor(errors);
        return needed < specifiedRatio ? 1 / ((1 / needed) - (1 / specifiedRatio)) : null;
    }
}
