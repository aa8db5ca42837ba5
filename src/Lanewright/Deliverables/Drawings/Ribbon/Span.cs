namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>A dimension line under the ribbon: what holds from one place to another.</summary>
/// <param name="Row">Which row of dimension lines, from 0.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Text">What holds between.</param>
/// <param name="IsAlert">Whether it needs action.</param>
internal sealed record Span(int Row, Stop From, Stop To, string Text, bool IsAlert = false);
