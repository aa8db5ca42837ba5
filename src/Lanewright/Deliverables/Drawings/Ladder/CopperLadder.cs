using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>The ladder of passive copper: both ends and the wire between, at half the symbol rate.</summary>
internal static class CopperLadder
{
    private const double Same = 1e-9;

    /// <summary>The ladder, or null when the loss of the assembly cannot be computed.</summary>
    public static LadderModel? Of(StandardsLibrary standards, Solution solution)
    {
        if (solution.Cable is not AssemblyModel { Type: { } type } cable) return null;
        if (solution.Checks.FirstOrDefault(c => c.Name == CheckNames.CopperLoss) is not { Value: { } value } check) return null;
        var end = EndLoss(standards, cable, type, solution.Length, value);
        return new LadderModel
        {
            Start = 0,
            IsAbsolute = false,
            Steps = Steps(end, value),
            Loss = value,
            Limits = [new LadderLimit("limit of the assembly's loss", "", check)],
            Rows = [.. Rows(end, value, cable, solution.Length)],
            Notes =
            [
                $"Loss at {Numerals.Exact(type.Signal.Baud.NyquistGigahertz)} GHz, half the symbol rate, with the wire at its upper "
                    + "value. Levels are against the transmitter.",
                end is null ? "The tables here do not tell ends and wire apart for this loss, so it is drawn as one." : "",
            ],
            Ends = ("port A", "port B"),
        };
    }

    /// <summary>Loss of one end, when ends and wire from the tables add up to the loss that was judged; else null.</summary>
    private static double? EndLoss(StandardsLibrary standards, AssemblyModel cable, CopperType type, Length length, double judged)
    {
        var frequency = type.Signal.Baud.NyquistGigahertz;
        var wires = standards.TwinaxLosses.Where(t => t.Gauge == cable.Gauge).OrderBy(t => Math.Abs(t.Gigahertz - frequency)).Take(1);
        var ends = standards.EndLosses.OrderBy(e => Math.Abs(e.Gigahertz - frequency)).Take(1);
        foreach (var wire in wires)
        {
            foreach (var (_, loss) in ends)
                if (Math.Abs((wire.LossMax.Value * length.Metres) + (2 * loss.Value.Value) - judged) < Same) return loss.Value.Value;
        }
        return null;
    }

    private static ImmutableArray<LadderStep> Steps(double? end, double whole) => end is { } each
        ? [
            new LadderStep(LadderStepKind.CopperEnd, each, 0),
            new LadderStep(LadderStepKind.Stretch, whole - (2 * each), 1),
            new LadderStep(LadderStepKind.CopperEnd, each, 1),
        ]
        : [new LadderStep(LadderStepKind.Stretch, whole, 1)];

    private static IEnumerable<LadderRow> Rows(double? end, double whole, AssemblyModel cable, Length length)
    {
        if (end is { } each)
        {
            var wire = whole - (2 * each);
            yield return new LadderRow("ends of the assembly", "2", Db(each), Db(2 * each), LadderStepKind.CopperEnd);
            var perMetre = length.Metres > 0 ? Numerals.Unit(wire / length.Metres, "dB/m") : "";
            var name = $"wire, {Numerals.Whole(cable.Gauge)} AWG";
            yield return new LadderRow(name, length.ToString(), perMetre, Db(wire), LadderStepKind.Stretch);
        }
        yield return new LadderRow("whole loss", "", "", Db(whole), IsTotal: true);
    }

    private static string Db(double value) => Numerals.Unit(value, "dB");
}
