using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>Pads that have to be fitted.</summary>
internal sealed class PadOnLine() : LineRule("LW5132", nameof(PadOnLine), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        var ways = new List<string>();
        foreach (var route in line.Routes)
        {
            var design = route.Answer.Design;
            var pads = design.Amplifiers.SelectMany(a => a.Pads.Select(p => $"{Shown(p.Loss)} {p.Side} {a.Words}")).ToList();
            if (design.ReceiverPad.Value > 0) pads.Add($"{Shown(design.ReceiverPad)} before each receiver");
            if (pads.Count > 0) ways.Add($"{string.Join(", ", pads)} over {route.Name}");
        }
        if (ways.Count > 0) Say(judgement, line, $"pads have to be fitted before it is lit: {string.Join("; ", ways)}");
    }

    private static string Shown(Decibels pad) => Numerals.Unit(Math.Round(pad.Value, 1), "dB");
}
