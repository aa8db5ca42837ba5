using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Growth cut where the question changes: hosts are counted whole, so that between two cuts every year has the same hosts and the
/// same fabric is asked for.</summary>
public sealed class GrowthSteps
{
    private readonly ImmutableArray<int> firsts;
    private readonly int most;

    private GrowthSteps(ImmutableArray<int> firsts, int most)
    {
        this.firsts = firsts;
        this.most = most;
    }

    /// <summary>How many different questions there are.</summary>
    public int Count => firsts.Length;

    /// <summary>Cuts a range that begins with no growth.</summary>
    /// <param name="most">The highest growth looked at, in the parts that <paramref name="ask"/> takes.</param>
    /// <param name="ask">The question with a growth.</param>
    public static GrowthSteps Of(int most, Func<int, WantedFabric> ask)
    {
        var firsts = ImmutableArray.CreateBuilder<int>();
        ImmutableArray<int> before = [];
        for (var parts = 0; parts <= most; parts++)
        {
            var counts = Counts(ask(parts));
            if (parts == 0 || !counts.SequenceEqual(before)) firsts.Add(parts);
            before = counts;
        }
        return new GrowthSteps(firsts.ToImmutable(), most);
    }

    /// <summary>The least growth of a step.</summary>
    public int First(int step) => firsts[step];

    /// <summary>The most growth of a step.</summary>
    public int Last(int step) => step + 1 < firsts.Length ? firsts[step + 1] - 1 : most;

    /// <summary>The step that a growth lies in.</summary>
    public int At(int parts) => firsts.BinarySearch(parts) is var found && found >= 0 ? found : ~found - 1;

    private static ImmutableArray<int> Counts(WantedFabric wanted) =>
    [
        .. wanted.Hosts.SelectMany(h => Enumerable.Range(0, wanted.Years + 1).Select(y => HostBuild.CountIn(h, y, wanted.Growth))),
    ];
}
