using System.Runtime.Intrinsics;

namespace Lanewright.Engineering.Lines;

/// <summary>Powers of e for all channels of a comb, four a step. The width is fixed and the last step is padded, so that no machine rounds
/// otherwise than another.</summary>
internal static class Exponentials
{
    /// <summary>Writes e to the power of a constant and a slope times each value.</summary>
    public static void Of(double constant, double slope, ReadOnlySpan<double> values, Span<double> into)
    {
        var whole = values.Length - (values.Length % Vector256<double>.Count);
        for (var i = 0; i < whole; i += Vector256<double>.Count)
            Vector256.Exp(Vector256.Create(constant) + (slope * Vector256.Create(values[i..]))).CopyTo(into[i..]);
        if (whole == values.Length) return;
        Span<double> last = stackalloc double[Vector256<double>.Count];
        values[whole..].CopyTo(last);
        Vector256.Exp(Vector256.Create(constant) + (slope * Vector256.Create<double>(last))).CopyTo(last);
        last[..(values.Length - whole)].CopyTo(into[whole..]);
    }
}
