using MathNet.Numerics;

namespace Lanewright.Engineering.Links;

/// <summary>Bit errors of levels in Gaussian noise that is alike on all of them. The quality is half the distance of two levels over the
/// standard deviation of the noise; legal: zero or more.</summary>
public static class LevelErrors
{
    /// <summary>Share of the outermost and inner levels of four that noise turns into a neighbour.</summary>
    private const double ThreeQuarters = 3.0 / 4;

    /// <summary>Share of wrong bits that four levels make where noise is all there is.</summary>
    public const double MostOfFour = ThreeQuarters / 2;

    /// <summary>Two levels.</summary>
    public static double OfTwo(double quality) => SpecialFunctions.Erfc(quality / Math.Sqrt(2)) / 2;

    /// <summary>Four levels with Gray code: half of the wrong symbols' bits are wrong.</summary>
    public static double OfFour(double quality) => SymbolsOfFour(quality) / 2;

    /// <summary>Share of wrong symbols of four levels.</summary>
    public static double SymbolsOfFour(double quality) => ThreeQuarters * SpecialFunctions.Erfc(quality / Math.Sqrt(2));

    /// <summary>The quality at which so many symbols of four levels are wrong; the share lies above 0 and below 0.75.</summary>
    public static double QualityForSymbolsOfFour(double errors) => Math.Sqrt(2) * SpecialFunctions.ErfcInv(errors / ThreeQuarters);

    /// <summary>The quality of two levels that leaves so many wrong bits; the share lies above 0 and below 0.5.</summary>
    public static double QualityFor(double errors) => Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * errors);
}
