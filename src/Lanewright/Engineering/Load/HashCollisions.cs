using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What happens when few large flows, each as fast as a link, are spread over equal links by a hash. All values are
/// exact.</summary>
/// <param name="NoCollision">Probability that no two flows meet.</param>
/// <param name="BusyLinks">Expected number of links with a flow.</param>
/// <param name="BusiestFlows">Expected number of flows on the busiest link.</param>
/// <param name="SharingFlows">Expected number of flows that share their link.</param>
/// <param name="Throughput">Expected share of the flows' rate that gets through.</param>
public sealed record HashCollisions(Share NoCollision, double BusyLinks, double BusiestFlows, double SharingFlows, Share Throughput)
{
    /// <summary>Flows up to which this is computed: the question is one of few flows, and chances stay within what a double
    /// holds.</summary>
    public const int MostFlows = 1000;

    /// <summary>Computes them.</summary>
    /// <param name="flows">Flows, 1 to <see cref="MostFlows"/>.</param>
    /// <param name="links">Equal links, one or more.</param>
    public static HashCollisions Of(int flows, int links)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(flows, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(flows, MostFlows);
        ArgumentOutOfRangeException.ThrowIfLessThan(links, 1);
        var apart = 1.0;
        for (var placed = 0; placed < flows; placed++) apart *= Math.Max(0, links - placed) / (double)links;
        var missed = 1 - (1.0 / links);
        var busy = links * (1 - Math.Pow(missed, flows));
        var sharing = flows * (1 - Math.Pow(missed, flows - 1));
        return new HashCollisions(Share.From(apart), busy, ExpectedMost(flows, links), sharing, Share.From(busy / flows));
    }

    /// <summary>The expected maximum: the sum over t of the probability that some link has more than t flows.</summary>
    private static double ExpectedMost(int flows, int links)
    {
        var expected = 0.0;
        for (var most = 0; most < flows; most++)
        {
            var more = 1 - ProbabilityThatNoneExceeds(most, flows, links);
            expected += Math.Max(0, more);
            if (most > flows / links && more <= double.Epsilon) break;
        }
        return expected;
    }

    /// <summary>The coefficient of x^n in the power m of the exponential series cut off after x^t, times n!/m^n. It is built up link by
    /// link as a chance (each link takes its binomial part of the flows that are left), so that nothing is subtracted and nothing
    /// overflows.</summary>
    private static double ProbabilityThatNoneExceeds(int most, int flows, int links)
    {
        // fits[k]: the probability that k flows on the links taken so far leave none above the most.
        var fits = new double[flows + 1];
        fits[0] = 1;
        for (var link = 1; link <= links; link++)
        {
            var next = new double[flows + 1];
            var (here, elsewhere) = (1.0 / link, 1 - (1.0 / link));
            for (var k = 0; k <= flows; k++)
            {
                var chance = Math.Pow(elsewhere, k);
                for (var i = 0; i <= Math.Min(most, k); i++)
                {
                    next[k] += chance * fits[k - i];
                    // On the first link nothing is elsewhere: only i = k has a chance.
                    chance = link == 1 ? (i + 1 == k ? 1 : 0) : chance * (k - i) / (i + 1) * here / elsewhere;
                }
            }
            fits = next;
        }
        return fits[flows];
    }
}
