namespace Lanewright.Workbench.Sheets;

/// <summary>Which of two texts of the plan a sheet shows.</summary>
internal enum SheetSide
{
    /// <summary>The text as typed.</summary>
    Typed,

    /// <summary>The text on disk.</summary>
    Saved,

    /// <summary>One beside the other.</summary>
    Both,
}
