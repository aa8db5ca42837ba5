using MathNet.Numerics;

namespace Lanewright.Engineering.Lines;

/// <summary>Differential group delay: its mean grows with the root of length, its momentary value is spread by Maxwell's law.</summary>
public static class GroupDelay
{
    /// <summary>Chance that the delay exceeds so many times its mean.</summary>
    public static double Beyond(double timesMean)
    {
        var x = 2 * timesMean * Math.Sqrt(2 / Math.PI);
        return SpecialFunctions.Erfc(x / Math.Sqrt(2)) + (Math.Sqrt(2 / Math.PI) * x * Math.Exp(-x * x / 2));
    }

    /// <summary>How many times the mean the delay exceeds with a chance.</summary>
    public static double TimesMean(double chance)
    {
        var (low, high) = (0.0, 10.0);
        for (var step = 0; step < Halvings; step++)
        {
            var middle = (low + high) / 2;
            if (Beyond(middle) > chance) low = middle;
            else high = middle;
        }
        return high;
    }

    private const int Halvings = 60;
}
