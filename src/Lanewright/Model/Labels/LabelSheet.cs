using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Labels;

/// <summary>The sheet that labels are printed on: a page with places in columns and rows.</summary>
/// <param name="Page">Its name.</param>
/// <param name="PageWidth">Width of the page.</param>
/// <param name="PageHeight">Height of the page.</param>
/// <param name="Width">Width of a label.</param>
/// <param name="Height">Height of a label.</param>
/// <param name="Columns">Labels side by side, 1 or more.</param>
/// <param name="Rows">Labels one below the other, 1 or more.</param>
/// <param name="Left">From the left edge of the page to the first label.</param>
/// <param name="Top">From the upper edge of the page to the first label.</param>
/// <param name="GapAcross">Between labels side by side.</param>
/// <param name="GapDown">Between labels one below the other.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record LabelSheet(
    string Page, Length PageWidth, Length PageHeight, Length Width, Length Height, int Columns, int Rows, Length Left, Length Top,
    Length GapAcross, Length GapDown, SourceSpan Span)
{
    /// <summary>Labels on a page.</summary>
    public int OnPage => Columns * Rows;

    /// <summary>How far the last column reaches from the left edge.</summary>
    public Length ReachAcross => Left + (Width * Columns) + (GapAcross * (Columns - 1));

    /// <summary>How far the last row reaches from the upper edge.</summary>
    public Length ReachDown => Top + (Height * Rows) + (GapDown * (Rows - 1));
}
