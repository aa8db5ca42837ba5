using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Lanewright.Quantities;
using Lanewright.Standards;
using MathNet.Numerics;

namespace Lanewright.Engineering.Links;

/// <summary>The chance that a channel of randomly mated connectors exceeds its loss limit. The loss of a mating is taken as
/// log-normal, the worst population that still keeps the mean and the 97 % value of its grade.</summary>
public sealed class LossStatistics
{
    /// <summary>The standard normal value that 97 % of a population stays below.</summary>
    public const double NormalAt97Percent = 1.880793608151251;

    private const int Steps = 3000;

    private static readonly ConditionalWeakTable<ConnectorGrade, LossStatistics> OfGrades = [];

    private readonly double mu;
    private readonly double sigma;

    // Links by the thousand have few counts of matings: each is folded once.
    private readonly ConcurrentDictionary<(int Matings, int Doublings), double[]> folded = new();

    private LossStatistics(double mu, double sigma)
    {
        this.mu = mu;
        this.sigma = sigma;
    }

    /// <summary>Mean of the logarithm of a mating's loss in dB.</summary>
    public double Mu => mu;

    /// <summary>Standard deviation of the logarithm of a mating's loss in dB.</summary>
    public double Sigma => sigma;

    /// <summary>Mean loss of a mating.</summary>
    public Decibels Mean => Decibels.From(Math.Exp(mu + (sigma * sigma / 2)));

    /// <summary>Standard deviation of the loss of a mating.</summary>
    public Decibels Deviation => Mean * Math.Sqrt(Math.Exp(sigma * sigma) - 1);

    /// <summary>The population of a grade.</summary>
    public static LossStatistics Of(ConnectorGrade grade) =>
        OfGrades.GetValue(grade, g => Of(g.Mean.Value, g.Percentile97.Value));

    /// <summary>The log-normal population with a mean and a 97 % value.</summary>
    public static LossStatistics Of(Decibels mean, Decibels percentile97)
    {
        var spread = NormalAt97Percent * NormalAt97Percent - (2 * Math.Log(percentile97.Value / mean.Value));
        var sigma = NormalAt97Percent - Math.Sqrt(spread);
        return new LossStatistics(Math.Log(mean.Value) - (sigma * sigma / 2), sigma);
    }

    /// <summary>The chance that a number of matings together lose more than a limit, by folding their distribution with itself.</summary>
    public double ChanceAbove(Decibels limit, int matings)
    {
        if (matings == 0) return limit < default(Decibels) ? 1 : 0;
        if (limit <= default(Decibels)) return 1;
        // Spans that double serve every limit with few foldings, and leave each at least half of the steps.
        var doublings = (int)Math.Max(0, Math.Ceiling(Math.Log2(limit.Value / Mean.Value)));
        var step = Mean.Value * Math.ScaleB(1, doublings) / Steps;
        var masses = folded.GetOrAdd((matings, doublings), _ => Fold(Masses(step), matings));
        // Losses were rounded to the middle of their step, so a part of the limit's own step lies below it.
        var place = (limit.Value / step) + 0.5;
        var cell = (int)Math.Min(Steps, Math.Floor(place));
        var below = masses.Take(cell).Sum() + (masses[cell] * Math.Min(1, place - cell));
        return Math.Clamp(1 - below, 0, 1);
    }

    private static double[] Fold(double[] one, int times)
    {
        var sum = new double[Steps + 1];
        sum[0] = 1;
        for (var power = times; power > 0; power >>= 1)
        {
            if ((power & 1) == 1) sum = Fold(sum, one);
            if (power > 1) one = Fold(one, one);
        }
        return sum;
    }

    /// <summary>The chance of each rounded loss from nothing to the limit.</summary>
    private double[] Masses(double step)
    {
        var masses = new double[Steps + 1];
        var below = 0.0;
        for (var i = 0; i <= Steps; i++)
        {
            var upTo = Cumulative((i + 0.5) * step);
            masses[i] = upTo - below;
            below = upTo;
        }
        return masses;
    }

    private double Cumulative(double loss) => SpecialFunctions.Erfc(-(Math.Log(loss) - mu) / (sigma * Math.Sqrt(2))) / 2;

    private static double[] Fold(double[] left, double[] right)
    {
        var sum = new double[left.Length];
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] == 0) continue;
            for (var j = 0; i + j < sum.Length; j++) sum[i + j] += left[i] * right[j];
        }
        return sum;
    }
}
