using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>The strongest light in a fibre of a line, all wavelengths together, against where the next hazard level begins.</summary>
internal static class LineLight
{
    /// <summary>The check: advice, and unknown where nobody says how strong a transmitter may be.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="strongest">The most that a transmitter sends.</param>
    /// <param name="behindAmplifiers">What leaves amplifiers, all channels together.</param>
    public static Check Of(LineQuestion question, PowerLevel? strongest, IEnumerable<PowerLevel> behindAmplifiers)
    {
        var most = question.Standards.LineValue("fibre-light", "hazard-most");
        // One wavelength before the multiplexer, or all of them behind it.
        var totals = behindAmplifiers.ToList();
        if (strongest is { } level)
        {
            totals.Add(level);
            totals.Add((level - question.MultiplexerLoss).OfAll(question.Channels.Channels.Length));
        }
        PowerLevel? total = strongest is null && totals.Count == 0 ? null : totals.MaxBy(t => t.Dbm);
        return Check.AtMost(LineCheckNames.FibreLight, total?.Dbm, most, CheckUnits.Average) with
        {
            IsAdvice = true,
            Note = "total power in the fibre; the label on the equipment and local rules decide",
        };
    }
}
