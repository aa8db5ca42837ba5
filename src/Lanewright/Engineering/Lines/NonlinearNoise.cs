using System.Runtime.Intrinsics;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Noise that the glass itself makes from a comb of channels of one width and power: the Gaussian-noise model summed over
/// channels (Poggiolini et al., JLT 30(24) 2012 and 32(4) 2014).
/// The channel sum holds for short spans as well, see <see cref="GlassSpan.InStep"/>. All values are 1/W²: noise in the width of a channel
/// is the value times the cube of the power.</summary>
public sealed class NonlinearNoise
{
    private readonly double spacing;
    private readonly double terahertz;
    private readonly double width;
    private readonly double crossScale;
    private readonly double mixing;
    private readonly double[] each;

    /// <summary>Takes the glass and the comb.</summary>
    /// <param name="span">The glass.</param>
    /// <param name="channels">Channels of the comb.</param>
    /// <param name="spacing">From channel to channel.</param>
    /// <param name="width">Width of a channel: its symbol rate.</param>
    public NonlinearNoise(GlassSpan span, int channels, Frequency spacing, Frequency width)
    {
        this.spacing = spacing.Hertz;
        terahertz = spacing.Terahertz;
        this.width = width.Hertz;
        Channels = channels;
        var scale = 16.0 / 27 * Squares.Of(span.Gamma * span.Effective.Metres / this.width);
        var reach = Math.Abs(span.Beta2) * span.InStep.Metres;
        Own = scale * Math.Asinh(Math.PI * Math.PI / 2 * reach * this.width * this.width) / (2 * Math.PI * reach);
        crossScale = 2 * scale / (4 * Math.PI * reach);
        mixing = Math.Asinh(Math.PI * Math.PI / 2 * Math.Abs(span.Beta2) / span.Alpha * this.width * this.width
            * Math.Pow(channels, 2 * this.width / this.spacing)) * span.Alpha;
        each = Neighbours(Math.PI * Math.PI * reach * this.width);
    }

    /// <summary>Channels of the comb.</summary>
    public int Channels { get; }

    /// <summary>What a channel does to itself.</summary>
    public double Own { get; }

    /// <summary>What neighbours do to each channel of a comb whose power rises from channel to channel by the same ratio, against the
    /// square of its own power: neighbours count by the squares of theirs. Beside it the same with each neighbour counted as often as it
    /// lies terahertz above the middle of the comb.</summary>
    public (double[] Cross, double[] Leaning) CrossTilted(Decibels step)
    {
        var (up, down) = (new double[Channels], new double[Channels]);
        var (upFar, downFar) = (new double[Channels], new double[Channels]);
        var weight = (step * 2).Ratio;
        var (rising, falling) = (1.0, 1.0);
        for (var m = 1; m < Channels; m++)
        {
            (rising, falling) = (rising * weight, falling / weight);
            up[m] = up[m - 1] + (each[m] * rising);
            down[m] = down[m - 1] + (each[m] * falling);
            upFar[m] = upFar[m - 1] + (each[m] * rising * m);
            downFar[m] = downFar[m - 1] + (each[m] * falling * m);
        }
        var (cross, leaning) = (new double[Channels], new double[Channels]);
        for (var i = 0; i < Channels; i++)
        {
            var above = Channels - 1 - i;
            cross[i] = crossScale * (up[above] + down[i]);
            leaning[i] = (cross[i] * Terahertz(i)) + (crossScale * (upFar[above] - downFar[i]) * terahertz);
        }
        return (cross, leaning);
    }

    /// <summary>How far a channel lies above the middle of the comb.</summary>
    public double Terahertz(int channel) => (channel - ((Channels - 1) / 2.0)) * terahertz;

    /// <summary>How much more the noise of several stretches is than their sum, since some of it adds up in step from one to the next:
    /// their number to a small power (Poggiolini et al., JLT 30(24) 2012 and 32(4) 2014). It is that of symbols like Gaussian noise; sets
    /// of a few symbols make less.</summary>
    /// <param name="stretches">How many follow each other, each amplified to what it began with.</param>
    /// <param name="each">How long one is.</param>
    public double InStep(int stretches, Length each) =>
        Math.Pow(stretches, 0.3 * Math.Log(1 + (6 / (mixing * each.Metres))));

    /// <summary>Share of the neighbours' part that symbols of an excess kurtosis leave of it. It holds for one span: over several the plain
    /// value stands. The own part is never scaled, since for QPSK that would fall below what happens.</summary>
    public static double CrossShare(double excessKurtosis) => 1 + (5.0 / 6 * excessKurtosis);

    /// <summary>The launch power that leaves most signal over noise, in watts: there the amplifiers' noise is twice the glass's.</summary>
    public static double BestWatts(double amplifierNoiseWatts, double noisePerCube) => Math.Cbrt(amplifierNoiseWatts / (2 * noisePerCube));

    /// <summary>What a neighbour one, two and so on channels away does: it depends on its distance alone, so a comb costs one pass and no
    /// square of its channels. Both arcs of a neighbour share one logarithm, four neighbours a step.</summary>
    private double[] Neighbours(double inner)
    {
        var found = new double[Channels + Vector256<double>.Count];
        var half = Vector256.Create(inner * width / 2);
        for (var m = 1; m < Channels; m += Vector256<double>.Count)
        {
            var apart = (Vector256<double>.Indices + Vector256.Create((double)m)) * Vector256.Create(inner * spacing);
            Vector256.Log(Arc(apart + half) / Arc(apart - half)).CopyTo(found, m);
        }
        return found;
    }

    private static Vector256<double> Arc(Vector256<double> x) => x + Vector256.Sqrt((x * x) + Vector256<double>.One);
}
