using CsCheck;
using Lanewright.Engineering.Power;

namespace Lanewright.Tests.Power;

/// <summary>Orders of outlets on three phases against every order, and what feeds carry over all racks by hand.</summary>
public sealed class PhaseDealTests
{
    // Source: brute force over all 3^n orders.
    [Fact]
    public void Order_HasTheLeastFullestPhaseOfAll() => Gen.Select(Gen.Int[1, 9].Array[1, 7], Gen.Bool).Sample(
        (numbers, isBetween) =>
        {
            double[] loads = [.. numbers.Select(n => n * 100.0).OrderDescending()];
            var deal = new PhaseDealer().Of([.. loads], 3, isBetween);
            Assert.True(deal.IsBest);
            var least = Orders(loads.Length).Min(o => Fullest(loads, o, isBetween));
            Assert.Equal(least, Fullest(loads, [.. deal.Sections], isBetween), 6);
        },
        iter: 200);

    // Worked by hand: the largest first gives 2200 W on one phase; 1000 + 800, 1000 + 800 and 3 x 600 give 1800 W on each.
    [Fact]
    public void LargestFirst_IsNotAlwaysBest()
    {
        var deal = new PhaseDealer().Of([1000, 1000, 800, 800, 600, 600, 600], 3, false);
        Assert.Equal(1800, Fullest([1000, 1000, 800, 800, 600, 600, 600], [.. deal.Sections], false));
    }

    // Worked by hand: ten racks of one load of 1150 W on three phases at 230 V to neutral: 5 A each, four of them on one phase and three on
    // each of the others; two feeds share each load, and the loss of the one doubles the other.
    [Fact]
    public void FeedOverAllRacks_IsDealtEvenlyFromRackToRack()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            catalogue: [own.yaml]
            policy: { power-factor: 100 % }
            sites: { main: { halls: { hall: { rows: { A: { racks: 10 } } } } } }
            devices:
              load: { model: load, racks: hall/A, per-rack: 1 }
            power:
              a: { racks: hall/A, volts: 398.3717 V, phases: 3, breaker: 16 A }
              b: { racks: hall/A, volts: 398.3717 V, phases: 3, breaker: 16 A }
            """ + StripLoadTests.Own));
        var feeds = FeedLoad.Of(designed.Racks.Value, designed.Strips);
        Assert.Equal(["a", "b"], feeds.Select(f => f.Feed.Name));
        foreach (var feed in feeds)
        {
            Assert.Equal(10, feed.Strips);
            Assert.Equal(5750, feed.Whole.Watts.Value, 6);
            Assert.Equal([10, 7.5, 7.5], feed.Whole.Phases.Select(p => Math.Round(p.Value, 3)).OrderDescending());
            Assert.Equal(11500, feed.AfterLoss.Watts.Value, 6);
            Assert.Equal([20, 15, 15], feed.AfterLoss.Phases.Select(p => Math.Round(p.Value, 3)).OrderDescending());
            Assert.NotEqual(feed.Feed, feed.Lost);
        }
    }

    private static double Fullest(double[] loads, int[] sections, bool isBetween)
    {
        var sums = new double[3];
        for (var i = 0; i < loads.Length; i++) sums[sections[i]] += loads[i];
        return isBetween
            ? Enumerable.Range(0, 3).Max(i => Math.Sqrt((sums[i] * sums[i]) + (sums[(i + 1) % 3] * sums[(i + 1) % 3])
                + (sums[i] * sums[(i + 1) % 3])))
            : sums.Max();
    }

    private static IEnumerable<int[]> Orders(int count) => count == 0
        ? [[]]
        : Orders(count - 1).SelectMany(o => Enumerable.Range(0, 3).Select(s => (int[])[.. o, s]));
}
