namespace Lanewright.Workbench.Sheets;

/// <summary>Which of two texts of the plan a kind of sheet may be asked to show.</summary>
internal enum SideChoice
{
    /// <summary>The text as typed alone.</summary>
    None,

    /// <summary>Either text, one at a time.</summary>
    Either,

    /// <summary>Either text, or both on one page.</summary>
    Beside,
}
