using Lanewright.Standards;
using MathNet.Numerics;

namespace Lanewright.Engineering.Links;

/// <summary>A Reed-Solomon code and what random bit errors do to it. Errors that come in bursts do worse than this says.</summary>
/// <param name="Symbols">Symbols of a codeword.</param>
/// <param name="Payload">Of these, symbols that carry data.</param>
/// <param name="Corrects">Wrong symbols that it corrects.</param>
/// <param name="SymbolBits">Bits of a symbol.</param>
public sealed record ReedSolomonCode(int Symbols, int Payload, int Corrects, int SymbolBits)
{
    /// <summary>The code of a name; null where the tables know none of the kind by it.</summary>
    public static ReedSolomonCode? Find(StandardsLibrary standards, string name)
    {
        if (standards.Fec(name) is not { } sheet || sheet.Real("symbol-bits") is null) return null;
        return new ReedSolomonCode(sheet.Whole("n"), sheet.Whole("k"), sheet.Whole("corrects"), sheet.Whole("symbol-bits"));
    }

    /// <summary>Share of codewords that cannot be corrected.</summary>
    public double Codewords(double bitErrors) => Sum(bitErrors, static (_, chance) => chance);

    /// <summary>Share of wrong bits behind the decoder, which leaves what it cannot correct as it came.</summary>
    public double Bits(double bitErrors) =>
        Sum(bitErrors, (wrong, chance) => chance * wrong / Symbols) * bitErrors / Math.Max(SymbolErrors(bitErrors), double.Epsilon);

    /// <summary>The share of wrong bits that leaves so many codewords uncorrected.</summary>
    public double BitErrorsFor(double codewords)
    {
        var (low, high) = (Math.Log(Fewest), Math.Log(1.0 / 2));
        for (var step = 0; step < Halvings; step++)
        {
            var middle = (low + high) / 2;
            if (Codewords(Math.Exp(middle)) < codewords) low = middle;
            else high = middle;
        }
        return Math.Exp((low + high) / 2);
    }

    /// <summary>Smallest frames in a codeword, at the smallest gap.</summary>
    public double FramesIn(StandardsLibrary standards) => Payload * SymbolBits * OfFrames(standards, "transcoded-from")
        / OfFrames(standards, "transcoded-to") / OfFrames(standards, "smallest-bits");

    /// <summary>Bits of the smallest frame itself, without preamble and gap.</summary>
    public static double SmallestFrame(StandardsLibrary standards) => OfFrames(standards, "smallest-frame");

    private static double OfFrames(StandardsLibrary standards, string field) =>
        standards.Fec("Ethernet frames")?.Real(field)?.Value ?? double.NaN;

    /// <summary>Share of frames lost when a frame is lost with each codeword that a part of it lies in.</summary>
    /// <param name="codewords">Share of codewords that cannot be corrected.</param>
    /// <param name="framesInCodeword">Frames that a codeword holds.</param>
    /// <param name="interleaved">Codewords that bits are dealt out to in turn.</param>
    public static double Frames(double codewords, double framesInCodeword, int interleaved = 1) =>
        codewords * interleaved * (1 + (interleaved * framesInCodeword)) / (interleaved * framesInCodeword);

    /// <summary>Share of frames of so many bits with a wrong one, without any code.</summary>
    public static double FramesUncoded(double bitErrors, double bits) => OneOf(bits, bitErrors);

    private const int Halvings = 100;
    private const double Fewest = 1e-30;

    /// <summary>Chance that at least one of so many is wrong. For few errors the product itself: of one less next to nothing no digits
    /// are left.</summary>
    private static double OneOf(double many, double wrong) => many * wrong < Small ? many * wrong : 1 - Math.Pow(1 - wrong, many);

    private const double Small = 1e-6;

    private double SymbolErrors(double bitErrors) => OneOf(SymbolBits, bitErrors);

    /// <summary>Over all numbers of wrong symbols beyond what is corrected, in logarithms: chances reach down to 1e-30.</summary>
    private double Sum(double bitErrors, Func<int, double, double> weigh)
    {
        var wrong = SymbolErrors(bitErrors);
        if (wrong <= 0) return 0;
        if (wrong >= 1) return 1;
        var (logWrong, logRight) = (Math.Log(wrong), Math.Log(1 - wrong));
        var sum = 0.0;
        for (var i = Corrects + 1; i <= Symbols; i++)
        {
            var ways = SpecialFunctions.FactorialLn(Symbols) - SpecialFunctions.FactorialLn(i) - SpecialFunctions.FactorialLn(Symbols - i);
            sum += weigh(i, Math.Exp(ways + (i * logWrong) + ((Symbols - i) * logRight)));
        }
        return Math.Min(1, sum);
    }
}
