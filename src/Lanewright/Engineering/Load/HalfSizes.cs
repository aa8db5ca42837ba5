using System.Numerics;

namespace Lanewright.Engineering.Load;

/// <summary>How many hosts whole bundles can make.</summary>
internal sealed class HalfSizes
{
    private readonly BigInteger[] sumsFrom;

    /// <summary>Takes the hosts of each bundle.</summary>
    public HalfSizes(IReadOnlyList<int> members)
    {
        // From the last to the first: which sums the bundles from there on can make.
        sumsFrom = new BigInteger[members.Count + 1];
        sumsFrom[members.Count] = BigInteger.One;
        for (var i = members.Count - 1; i >= 0; i--) sumsFrom[i] = sumsFrom[i + 1] | (sumsFrom[i + 1] << members[i]);
        Half = members.Sum() / 2;
        while (!CanMake(0, Half)) Half--;
    }

    /// <summary>The most hosts, up to half of all, that whole bundles can make.</summary>
    public int Half { get; }

    /// <summary>Whether the bundles from one on can make so many hosts.</summary>
    public bool CanMake(int from, int hosts) => hosts >= 0 && !((sumsFrom[from] >> hosts) & BigInteger.One).IsZero;
}
