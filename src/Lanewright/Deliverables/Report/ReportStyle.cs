using Lanewright.Deliverables.Drawings;

namespace Lanewright.Deliverables.Report;

/// <summary>The looks of the report: those of the drawings, carried on.</summary>
internal static class ReportStyle
{
    /// <summary>The rules. They hold no character that HTML or XML would read as its own.</summary>
    public const string Sheet =
        "@page{size:A4 landscape;margin:11mm 12mm}"
        + "html{background:" + DrawingStyle.Paper + "}"
        + "body{font-family:" + DrawingStyle.Fonts + ";font-size:14px;line-height:1.45;color:" + DrawingStyle.Ink
        + ";max-width:1240px;margin:0 auto;padding:28px 32px 60px;font-variant-numeric:tabular-nums}"
        + "h1{font-size:26px;margin:0 0 2px}h2{font-size:19px;margin:44px 0 10px;padding-top:10px;border-top:2px solid "
        + DrawingStyle.Ink + "}"
        + "h3{font-size:15px;margin:22px 0 6px}p{margin:6px 0;max-width:100ch}"
        + ".soft{color:#5c6168}.alert{color:" + DrawingStyle.Accent + ";font-weight:600}"
        + "dl.head{display:flex;flex-wrap:wrap;gap:1px;margin:14px 2px 0 1px}"
        + "dl.head div{flex:1 1 auto;padding:6px 12px 8px;outline:1px solid " + DrawingStyle.Ink + "}"
        + "dt{font-size:11.5px;color:#5c6168}dd{margin:0;font-weight:600;overflow-wrap:anywhere}"
        + ".figures{display:grid;grid-template-columns:repeat(5,auto);justify-content:start;gap:10px 44px;margin:22px 0 4px}.figures "
        + "b{display:block;font-size:23px;font-weight:600;line-height:1.2}"
        + ".figures span{font-size:12px;color:#5c6168}.figures .act b{color:" + DrawingStyle.Accent + "}"
        + "@media(max-width:700px){.figures{grid-template-columns:repeat(2,auto)}}"
        + "table{border-collapse:collapse;width:100%;margin:8px 0 14px;font-size:12.5px}"
        + "th{text-align:left;font-weight:600;border-bottom:1.3px solid " + DrawingStyle.Ink
        + ";padding:4px 10px 4px 0;vertical-align:bottom}"
        + "td{border-bottom:.6px solid #cfc9ba;padding:4px 10px 4px 0;vertical-align:top;overflow-wrap:break-word}"
        + "th.n,td.n{text-align:right;white-space:nowrap}td.w{white-space:nowrap}tr.sum td{border-top:1.3px solid " + DrawingStyle.Ink
        + ";font-weight:600}"
        + "thead{display:table-header-group}tr{break-inside:avoid}"
        + "svg.lw{width:100%;height:auto;display:block;border:1px solid #ddd6c6}figure{margin:12px 0;break-inside:avoid}"
        + "a{color:inherit;text-decoration-thickness:1px;text-underline-offset:2px}"
        + "h2,h3{break-after:avoid}p{break-inside:avoid}nav{font-size:12.5px}nav a{margin-right:14px;display:inline-block}"
        + ".stop{display:inline-block;background:" + DrawingStyle.Accent + ";color:#fffdf8;font-weight:600;padding:0 7px}"
        + ".open{display:inline-block;border:1.3px solid " + DrawingStyle.Ink + ";font-weight:600;padding:0 6px}"
        + "@media print{html,body{background:#fff}body{max-width:none;padding:0;font-size:11.5px}nav{display:none}table{font-size:10.5px}"
        + "svg.lw{border:0}svg.lw .paper{fill:#fff}svg.lw .gap,svg.lw .halo{stroke:#fff}.ribbon svg.lw{max-height:138mm}.tall "
        + "svg.lw{max-height:184mm}.ladder "
        + "svg.lw{max-height:126mm}th,td{padding-top:2px;padding-bottom:2px}h2{margin-top:22px}figure{margin:6px "
        + "0}.stop{print-color-adjust:exact;-webkit-print-color-adjust:exact;border:1px solid " + DrawingStyle.Accent + "}}";
}
