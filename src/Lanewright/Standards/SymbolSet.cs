namespace Lanewright.Standards;

/// <summary>A set of symbols that coherent light carries.</summary>
/// <param name="Name">Such as <c>16QAM</c>.</param>
/// <param name="ErrorFactor">Before the complementary error function.</param>
/// <param name="ErrorDivisor">Under its root, below the ratio of signal to noise.</param>
/// <param name="Bits">Bits of a symbol in one polarisation.</param>
/// <param name="ExcessKurtosis">How far from Gaussian the symbols are; null when not known.</param>
public sealed record SymbolSet(
    string Name, Known<double> ErrorFactor, Known<double> ErrorDivisor, int Bits, Known<double>? ExcessKurtosis)
{
    /// <summary>Reads the sets of a table; one without its formula is left out.</summary>
    public static IEnumerable<SymbolSet> Read(FactTable table) =>
        from sheet in table.Sheets
        let factor = sheet.Real("error-factor")
        let divisor = sheet.Real("error-divisor")
        where factor is not null && divisor is not null
        select new SymbolSet(sheet.Subject, factor.Value, divisor.Value, sheet.Whole("bits"), sheet.Real("excess-kurtosis"));
}
