namespace Lanewright.Deliverables.Drawings;

/// <summary>The looks of drawings: ink on warm paper, one accent for what needs action. Names are short because they stand in every
/// element.</summary>
internal static class DrawingStyle
{
    /// <summary>Paper.</summary>
    public const string Paper = "#faf7f0";

    /// <summary>Ink.</summary>
    public const string Ink = "#22262b";

    /// <summary>What needs action.</summary>
    public const string Accent = "#b3321b";

    /// <summary>Open fonts first, then whatever the reader has.</summary>
    public const string Fonts = "'Noto Sans','Liberation Sans','DejaVu Sans',sans-serif";

    /// <summary>The rules, for a drawing by itself and for a page that holds several.</summary>
    public const string Sheet =
        ".lw text{font-family:" + Fonts + ";font-size:12px;fill:" + Ink + ";font-variant-numeric:tabular-nums}"
        + ".lw .paper{fill:" + Paper + "}"
        + ".lw .title{font-size:19px;font-weight:600}.lw .sub{font-size:13px}.lw .head{font-size:11.5px}"
        + ".lw .bold{font-weight:600}.lw .small{font-size:10.5px}.lw .tiny{font-size:9.5px}"
        + ".lw .soft{fill:#5c6168}.lw .light{fill:#fffdf8}.lw .alert{fill:" + Accent + ";font-weight:600}"
        + ".lw .halo{paint-order:stroke;stroke:" + Paper + ";stroke-width:3px;stroke-linejoin:round}"
        + ".lw .mid{text-anchor:middle}.lw .end{text-anchor:end}"
        + ".lw .ink{stroke:" + Ink + ";stroke-width:1.3;fill:none}.lw .fine{stroke:" + Ink + ";stroke-width:.8;fill:none}"
        + ".lw .faint{stroke:#b9b4a8;stroke-width:.8;fill:none}.lw .heavy{stroke:" + Ink
        + ";stroke-width:2.4;fill:none;stroke-linejoin:round}"
        + ".lw .broken{stroke-dasharray:7 4}.lw .dots{stroke-dasharray:1.5 3}"
        + ".lw .box{stroke:" + Ink + ";stroke-width:1.3;fill:#fffdf8}.lw .block{stroke:" + Ink + ";stroke-width:1;fill:#f0ebdf}"
        + ".lw .full{fill:" + Ink + ";stroke:" + Ink + ";stroke-width:.8}.lw .strand .full{stroke:#fffdf8;stroke-width:1.2}.lw "
        + ".hollow{fill:#fffdf8;stroke:" + Ink + ";stroke-width:1.1}"
        + ".lw .lit{stroke:" + Ink + ";stroke-width:1.2}.lw .dark{stroke:#8d897f;stroke-width:1;fill:none;stroke-dasharray:2 2}"
        + ".lw .case{stroke:" + Ink + ";stroke-width:5;fill:none}.lw .core{stroke-width:3.2;fill:none}"
        + ".lw .stripe{stroke:" + Ink + ";stroke-width:1.1;fill:none;stroke-dasharray:2 6}.lw "
        + ".stripe2{stroke:#f4d327;stroke-width:1.1;fill:none;stroke-dasharray:2 6}"
        + ".lw .pair{stroke:" + Ink + ";stroke-width:4.4;fill:none}.lw .gap{stroke:" + Paper + ";stroke-width:1.8;fill:none}"
        + ".lw .back{stroke-dasharray:10 5}.lw .load,.lw .rim{fill:none;stroke-linecap:round}.lw .rim{stroke:#8d897f}"
        + ".lw .shade1{fill:#33393f}.lw .shade2{fill:#7a6f5d}.lw .shade3{fill:#b5a98d}.lw .shade4{fill:#e3dbc6}"
        + ".lw .shade1,.lw .shade2,.lw .shade3,.lw .shade4{stroke:" + Ink + ";stroke-width:.7}"
        + ".lw .act{stroke:" + Accent + ";stroke-width:2.2;fill:none}.lw .actfill{fill:" + Accent + ";stroke:" + Accent
        + ";stroke-width:.8}";
}
