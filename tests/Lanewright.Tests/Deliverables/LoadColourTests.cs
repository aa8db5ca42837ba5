using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Quantities;

namespace Lanewright.Tests.Deliverables;

/// <summary>The scale of loads is even for the eye, and stays in order for eyes that tell fewer colours apart.</summary>
public sealed class LoadColourTests
{
    /// <summary>Linear RGB as seen without one kind of cone: the matrices of Machado, Oliveira and Fernandes (2009) at full
    /// severity.</summary>
    public static TheoryData<string, double[]> Eyes => new()
    {
        { "all cones", [1, 0, 0, 0, 1, 0, 0, 0, 1] },
        { "no long-wave cones", [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998] },
        { "no middle-wave cones", [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881] },
        { "no short-wave cones", [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900] },
    };

    [Theory]
    [MemberData(nameof(Eyes))]
    public void EqualSteps_AreEqualForTheEye(string eye, double[] matrix)
    {
        var seen = Enumerable.Range(0, 11).Select(i => Lightness(Seen(LoadColour.Of(Share.From(i / 10.0)), matrix))).ToList();
        // CIE 1976 lightness falls all the way, and no step is much smaller than another.
        var steps = seen.Zip(seen.Skip(1), (a, b) => a - b).ToList();
        Assert.All(steps, s => Assert.True(s > 0, $"{eye}: {string.Join(' ', steps)}"));
        Assert.True(steps.Min() > 0.6 * steps.Average() && steps.Max() < 1.4 * steps.Average(), $"{eye}: {string.Join(' ', steps)}");
    }

    [Fact]
    public void BeyondFull_StaysAtFull() => Assert.Equal(LoadColour.Of(Share.From(1)), LoadColour.Of(Share.From(7)));

    private static double[] Seen(string colour, double[] m)
    {
        var bytes = Convert.FromHexString(colour.AsSpan(1));
        var rgb = bytes.Select(b => Linear(b / 255.0)).ToArray();
        return [.. m.Chunk(3).Select(row => Math.Max(0, (row[0] * rgb[0]) + (row[1] * rgb[1]) + (row[2] * rgb[2])))];
    }

    /// <summary>The transfer of IEC 61966-2-1.</summary>
    private static double Linear(double coded) => coded <= 0.04045 ? coded / 12.92 : Math.Pow((coded + 0.055) / 1.055, 2.4);

    /// <summary>CIE 1976 lightness of linear RGB with the primaries of IEC 61966-2-1.</summary>
    private static double Lightness(double[] rgb)
    {
        var y = (0.2126 * rgb[0]) + (0.7152 * rgb[1]) + (0.0722 * rgb[2]);
        return y > 0.008856 ? (116 * Math.Cbrt(y)) - 16 : 903.3 * y;
    }
}
