using System.Text;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;
using Lanewright.Model.Labels;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>Sheets of labels to print: one page of HTML whose drawings are as large as the paper, to a tenth of a millimetre.</summary>
public static class LabelSheets
{
    /// <summary>Labels drawn at most: a browser that lays out more takes minutes. The table holds all.</summary>
    public const int MostDrawn = 10_000;

    /// <summary>Writes them.</summary>
    public static void Write(DesignedPlan designed, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true);
        writer.Write("<!DOCTYPE html>\n");
        var markup = new MarkupWriter(writer);
        var sheet = designed.Plan.Labels;
        markup.Open("html", ("xmlns", "http://www.w3.org/1999/xhtml"), ("lang", "en-GB"));
        Head(markup, designed.Plan.Name, sheet);
        markup.Open("body");
        // Labels of a large plan are many: those drawn are made once, and the others counted once.
        var drawn = LabelList.Of(designed).Take(MostDrawn).ToList();
        var tiny = drawn.Count(l => LabelLine.Smallest(sheet, l) < LabelLine.Readable);
        if (tiny > 0)
            markup.Element("p", $"On {Numerals.Grouped(tiny)} labels letters are smaller than {Numerals.Plain(LabelLine.Readable)} mm "
                + "(5 pt), too small to be read on a rack: take larger labels or shorter names. labels.csv names the size of each.",
                ("class", "note"));
        var page = 0;
        foreach (var labels in drawn.Chunk(sheet.OnPage)) Page(markup, sheet, labels, ++page);
        var left = drawn.Count < MostDrawn ? 0 : LabelList.Of(designed).LongCount() - MostDrawn;
        if (left > 0)
            markup.Element("p", $"{Numerals.Grouped(left)} more labels are in labels.csv, with their pages and places.");
        markup.Close();
        markup.Close();
    }

    private static void Head(MarkupWriter markup, string plan, LabelSheet sheet)
    {
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        markup.Leaf("meta", ("http-equiv", "Content-Security-Policy"), ("content", "default-src 'none'; style-src 'unsafe-inline'"));
        markup.Element("title", plan + ", labels");
        markup.Open("style");
        markup.Trusted($"@page{{size:{Mm(sheet.PageWidth)}mm {Mm(sheet.PageHeight)}mm;margin:0}}"
            + "body{margin:0}svg{display:block;break-after:page;background:#fff}"
            + $"svg text{{font-family:{DrawingStyle.Fonts};fill:#000;font-variant-numeric:tabular-nums}}"
            + "svg .cut{fill:none;stroke:#b8b4aa;stroke-width:.1}@media print{svg .cut{stroke:none}}"
            + "@media print{.note{display:none}}@media screen{body{background:#ddd8cc}svg{margin:6mm auto}.note{margin:6mm}}");
        markup.Close();
        markup.Close();
    }

    private static void Page(MarkupWriter markup, LabelSheet sheet, PrintedLabel[] labels, int page)
    {
        var (width, height) = (Mm(sheet.PageWidth), Mm(sheet.PageHeight));
        markup.Open("svg", ("xmlns", "http://www.w3.org/2000/svg"), ("width", width + "mm"), ("height", height + "mm"),
            ("viewBox", $"0 0 {width} {height}"), ("role", "img"), ("aria-label", $"Labels, page {Numerals.Whole(page)}"));
        for (var i = 0; i < labels.Length; i++)
        {
            var (column, row) = (i % sheet.Columns, i / sheet.Columns);
            var x = sheet.Left.Millimetres + (column * (sheet.Width.Millimetres + sheet.GapAcross.Millimetres));
            var y = sheet.Top.Millimetres + (row * (sheet.Height.Millimetres + sheet.GapDown.Millimetres));
            Label(markup, sheet, labels[i], x, y);
        }
        markup.Close();
    }

    private static void Label(MarkupWriter markup, LabelSheet sheet, PrintedLabel label, double x, double y)
    {
        var (width, height) = (sheet.Width.Millimetres, sheet.Height.Millimetres);
        markup.Leaf("rect", ("x", N(x)), ("y", N(y)), ("width", N(width)), ("height", N(height)), ("class", "cut"));
        foreach (var line in LabelLine.Of(sheet, label))
            markup.Element("text", line.Text, ("x", N(x + LabelLine.Inset)), ("y", N(y + line.Y)), ("font-size", N(line.Size)),
                ("font-weight", line.IsBold ? "700" : "400"));
    }

    private static string Mm(Length length) => N(length.Millimetres);

    private static string N(double value) => MarkupWriter.Number(value);
}
