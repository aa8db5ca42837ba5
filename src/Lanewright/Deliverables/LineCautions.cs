namespace Lanewright.Deliverables;

/// <summary>What people who work on lines have to be told beside any figure.</summary>
public static class LineCautions
{
    /// <summary>In one line.</summary>
    public const string Short =
        "Light in these fibres is invisible and may harm eyes, most where a line is amplified: never look into a fibre or a connector, "
        + "close open ones, and switch amplifiers off before unplugging. The label on the equipment and local rules for laser safety "
        + "decide.";
}
