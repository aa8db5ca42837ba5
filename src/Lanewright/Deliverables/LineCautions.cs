using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
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

    /// <summary>Which hazard level the light in the fibre comes to; empty where the total power is not known.</summary>
    /// <param name="design">The line.</param>
    /// <param name="standards">Where the levels end.</param>
    public static string Hint(LineDesign design, StandardsLibrary standards)
    {
        if (design.Checks.FirstOrDefault(c => c.Name == LineCheckNames.FibreLight) is not { } check) return "";
        if (check is not { Value: { } total, Limit: { } most })
            return "how strong the light in a fibre may be is not known: take it for hazardous until the label or the maker says otherwise";
        var first = standards.LineValue("fibre-light", "hazard-from").Value;
        var where = total <= first ? "level 1" : total <= most ? "level 1M" : "beyond level 1M";
        return $"strongest light in a fibre {Numerals.Shown(total, "dBm")}: hazard {where}, for level 1 ends near "
            + $"{Numerals.Shown(first, "dBm")} and 1M near {Numerals.Shown(most, "dBm")} [{Marks.Name(check.Source?.Mark ?? Mark.Weak)}]; "
            + "a hint, and no classification";
    }
}
