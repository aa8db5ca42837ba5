namespace Lanewright.Workbench.Desk;

/// <summary>A line that differs.</summary>
/// <param name="OldNumber">Its number in the one text, from 1; 0 where it is new.</param>
/// <param name="OldText">What it says there.</param>
/// <param name="NewNumber">Its number in the other; 0 where it is gone.</param>
/// <param name="NewText">What it says there.</param>
public readonly record struct LineChange(int OldNumber, string OldText, int NewNumber, string NewText);
