using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>What people who work on lines have to be told beside any figure.</summary>
public static class LineCautions
{
    /// <summary>In one line.</summary>
    public const string Short =
        "Light in these fibres is invisible and may harm eyes, most where a line is amplified: never look into a fibre or a connector, "
        + "close open ones, and switch amplifiers off before unplugging. The label on the equipment and local rules for laser safety "
        + "decide.";

    /// <summary>Which hazard level the light in the fibre comes near; empty where the total power is not known.</summary>
    public static string Hint(LineDesign design)
    {
        if (design.Checks.FirstOrDefault(c => c.Name == LineCheckNames.FibreLight) is not { Value: { } total, Limit: { } next } check)
            return "";
        var where = total <= next ? "below" : "above";
        return $"strongest light in a fibre {Numerals.Shown(total, "dBm")}, {where} the {Numerals.Shown(next, "dBm")} from which hazard "
            + $"level 1M is touched [{Marks.Name(check.Source?.Mark ?? Mark.Weak)}]; a hint, and no classification";
    }
}
