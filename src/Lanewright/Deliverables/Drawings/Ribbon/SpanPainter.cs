namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Draws the dimension lines under a ribbon.</summary>
internal sealed class SpanPainter(Canvas canvas, RibbonLayout layout)
{
    /// <summary>Draws all of them.</summary>
    public void Draw()
    {
        foreach (var (span, y, words) in layout.SpanRows)
        {
            var (x1, x2) = (layout.X(span.From), layout.X(span.To));
            var style = span.IsAlert ? "act" : "fine";
            canvas.Begin("span");
            canvas.Line(x1, y, x2, y, style);
            foreach (var x in new[] { x1, x2 })
            {
                canvas.Line(x, layout.EndsBottom + 4, x, y + 5, "faint dots");
                canvas.Line(x - 4, y + 4, x + 4, y - 4, span.IsAlert ? "act" : "ink");
            }
            var top = y - 5 - ((words.Length - 1) * RibbonLayout.SpanStep);
            canvas.Lines((x1 + x2) / 2, top, words, RibbonLayout.SpanStep, span.IsAlert ? "small mid alert" : "small mid");
            canvas.End();
        }
    }
}
