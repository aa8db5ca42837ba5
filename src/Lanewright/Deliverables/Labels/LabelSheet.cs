using System.Text;
using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>The labels as a page to print at full size, one sheet after another.</summary>
public static class LabelSheet
{
    /// <summary>Labels on the page at most; the table of labels holds all.</summary>
    public const int MostLabels = 20_000;

    /// <summary>Writes the page.</summary>
    public static void Write(DesignedPlan designed, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true);
        writer.Write("<!DOCTYPE html>\n");
        var markup = new MarkupWriter(writer);
        markup.Open("html", ("xmlns", "http://www.w3.org/1999/xhtml"), ("lang", "en-GB"));
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        markup.Leaf("meta", ("http-equiv", "Content-Security-Policy"), ("content", "default-src 'none'; style-src 'unsafe-inline'"));
        markup.Element("title", designed.Plan.Name + ", labels");
        markup.Open("style");
        markup.Trusted(Style(designed.Plan.Labels));
        markup.Close();
        markup.Close();
        markup.Open("body");
        var left = MostLabels;
        markup.Element("p", "Print at full size, without scaling. Both ends of a cable carry the port they are plugged into, then the far "
            + $"one. The first {Numerals.Grouped(MostLabels)} labels; labels.csv holds all.", ("class", "hint"));
        markup.Open("main");
        foreach (var label in CableLabels.All(designed))
        {
            if (left-- == 0) break;
            markup.Open("div");
            markup.Element("b", label.Near);
            markup.Element("span", label.Far);
            markup.Element("i", $"{label.Cable} {label.End}, {label.Medium}");
            markup.Close();
        }
        markup.Close();
        markup.Close();
        markup.Close();
    }

    private static string Style(Model.LabelSize size)
    {
        var (width, height) = (Numerals.Plain(size.Width.Millimetres), Numerals.Plain(size.Height.Millimetres));
        return "@page{size:A4;margin:10mm}body{margin:0;font:8pt 'Noto Sans','Liberation Sans','DejaVu Sans',sans-serif;color:#000}"
            + ".hint{margin:4mm;font-size:9pt}@media print{.hint{display:none}}"
            + $"main{{display:grid;grid-template-columns:repeat({Numerals.Whole(size.Columns)},{width}mm);gap:1mm 2mm}}"
            + $"div{{box-sizing:border-box;width:{width}mm;height:{height}mm;border:.2mm solid #999;padding:1mm 1.5mm;overflow:hidden;"
            + "display:flex;flex-direction:column;justify-content:center;break-inside:avoid;white-space:nowrap}"
            + "b{font-size:9pt}i{font-style:normal;font-size:7pt}";
    }
}
