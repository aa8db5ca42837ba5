using System.Numerics;

namespace Lanewright.Engineering.Lines;

/// <summary>Powers of e for all channels of a comb at once, as many a step as the processor has lanes.</summary>
internal static class Exponentials
{
    /// <summary>Writes e to the power of a constant and a slope times each value.</summary>
    public static void Of(double constant, double slope, ReadOnlySpan<double> values, Span<double> into)
    {
        var i = 0;
        for (; i + Vector<double>.Count <= values.Length; i += Vector<double>.Count)
            Vector.Exp(new Vector<double>(constant) + (slope * new Vector<double>(values[i..]))).CopyTo(into[i..]);
        for (; i < values.Length; i++) into[i] = Math.Exp(constant + (slope * values[i]));
    }
}
