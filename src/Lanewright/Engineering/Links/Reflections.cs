using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>What the reflections of a channel add up to.</summary>
public static class Reflections
{
    /// <summary>Return loss of a number of equal reflections, none of them weakened by the way.</summary>
    public static Decibels ReturnLoss(int count, Decibels each) => Decibels.From(-(each.Value + (10 * Math.Log10(count))));

    /// <summary>Upper bound on the penalty of multipath interference: light reflected twice arrives late and closes the eye.
    /// Every pair of reflectors counts in full, transmitter and receiver among them. Null when the bound closes the eye.</summary>
    /// <param name="connections">Mated pairs.</param>
    /// <param name="connection">Reflectance of each.</param>
    /// <param name="module">Reflectance of transmitter and of receiver.</param>
    /// <param name="extinctionRatio">Extinction ratio of the transmitter.</param>
    /// <param name="modulation">Two levels or four.</param>
    public static Decibels? InterferencePenalty(
        int connections, Decibels connection, Decibels module, Decibels extinctionRatio, Modulation modulation)
    {
        var amplitudes = Enumerable.Repeat(Math.Sqrt(connection.Ratio), connections)
            .Prepend(Math.Sqrt(module.Ratio))
            .Append(Math.Sqrt(module.Ratio))
            .ToList();
        var crosstalk = 0.0;
        for (var i = 0; i < amplitudes.Count; i++)
            for (var j = i + 1; j < amplitudes.Count; j++) crosstalk += amplitudes[i] * amplitudes[j];
        var opening = Opening(crosstalk, extinctionRatio.Ratio, modulation == Modulation.Pam4 ? 3 : 1);
        return opening <= 0 ? null : Decibels.From(-10 * Math.Log10(opening));
    }

    /// <summary>Opening of the eye next to the top level. Levels are in units of the outer modulation amplitude.</summary>
    private static double Opening(double crosstalk, double extinction, int eyes)
    {
        var bottom = 1 / (extinction - 1);
        var top = bottom + 1;
        var below = top - (1.0 / eyes);
        return 1 - (2 * crosstalk * (top + Math.Sqrt(top * below)) * eyes);
    }
}
