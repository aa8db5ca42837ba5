using DocumentFormat.OpenXml.Spreadsheet;
using Lanewright.Deliverables.Tables;

namespace Lanewright.Deliverables.Workbook;

/// <summary>The looks of cells: one for each kind of column, the same for totals, and one for headings.</summary>
internal static class WorkbookStyles
{
    /// <summary>Index of the look of a heading.</summary>
    public const uint Heading = 1;

    private const uint FirstOfCells = 2;
    private const uint FirstOwnFormat = 164;
    private const uint General = 0;
    private const uint AsText = 49;
    private const uint TotalBorder = 2;

    private static readonly ColumnKind[] Kinds =
        [ColumnKind.Text, ColumnKind.Whole, ColumnKind.Money, ColumnKind.Real, ColumnKind.Prose, ColumnKind.Mixed];

    /// <summary>Index of the look of a cell.</summary>
    public static uint Of(ColumnKind kind) => FirstOfCells + (uint)Array.IndexOf(Kinds, kind);

    /// <summary>Index of the look of a cell in the row of totals.</summary>
    public static uint TotalOf(ColumnKind kind) => Of(kind) + (uint)Kinds.Length;

    /// <summary>The style sheet.</summary>
    public static Stylesheet Create()
    {
        CellFormat[] looks = [new CellFormat { FormatId = 0 }, HeadingLook(), .. Kinds.Select(k => Look(k, isTotal: false)),
            .. Kinds.Select(k => Look(k, isTotal: true))];
        return new Stylesheet(
            new NumberingFormats(Format(0, "#,##0"), Format(1, "#,##0.00"), Format(2, "#,##0.0##")) { Count = 3 },
            new Fonts(new Font(new FontSize { Val = 10 }, new FontName { Val = "Liberation Sans" }),
                new Font(new Bold(), new FontSize { Val = 10 }, new FontName { Val = "Liberation Sans" })) { Count = 2 },
            new Fills(Fill(PatternValues.None), Fill(PatternValues.Gray125), HeadingFill()) { Count = 3 },
            new Borders(Border(null, null), Border(null, BorderStyleValues.Thin), Border(BorderStyleValues.Thin, null)) { Count = 3 },
            new CellStyleFormats(new CellFormat { NumberFormatId = 0, FontId = 0, FillId = 0, BorderId = 0 }) { Count = 1 },
            new CellFormats(looks) { Count = (uint)looks.Length },
            new CellStyles(new CellStyle { Name = "Normal", FormatId = 0, BuiltinId = 0 }) { Count = 1 });
    }

    private static NumberingFormat Format(uint index, string code) => new() { NumberFormatId = FirstOwnFormat + index, FormatCode = code };

    private static uint FormatOf(ColumnKind kind) => kind switch
    {
        ColumnKind.Whole => FirstOwnFormat,
        ColumnKind.Money => FirstOwnFormat + 1,
        ColumnKind.Real => FirstOwnFormat + 2,
        ColumnKind.Mixed => General,
        _ => AsText,
    };

    private static CellFormat HeadingLook() => new(new Alignment { Vertical = VerticalAlignmentValues.Center })
    {
        FormatId = 0,
        FontId = 1,
        FillId = 2,
        BorderId = 1,
        ApplyFont = true,
        ApplyFill = true,
        ApplyBorder = true,
        ApplyAlignment = true,
    };

    /// <summary>All cells of a row stand at its top, so that a sentence of several lines reads from there.</summary>
    private static CellFormat Look(ColumnKind kind, bool isTotal)
    {
        var alignment = new Alignment { Vertical = VerticalAlignmentValues.Top };
        if (kind == ColumnKind.Prose) alignment.WrapText = true;
        var look = new CellFormat(alignment)
        {
            FormatId = 0,
            NumberFormatId = FormatOf(kind),
            ApplyNumberFormat = true,
            ApplyAlignment = true,
        };
        if (!isTotal) return look;
        (look.FontId, look.BorderId, look.ApplyFont, look.ApplyBorder) = (1u, TotalBorder, true, true);
        return look;
    }

    private static Fill Fill(PatternValues pattern) => new(new PatternFill { PatternType = pattern });

    private static Fill HeadingFill() => new(new PatternFill(new ForegroundColor { Rgb = "FFE9E3D4" },
        new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });

    private static Border Border(BorderStyleValues? top, BorderStyleValues? bottom) => new(
        new LeftBorder(),
        new RightBorder(),
        top is { } above ? new TopBorder { Style = above } : new TopBorder(),
        bottom is { } below ? new BottomBorder { Style = below } : new BottomBorder(),
        new DiagonalBorder());
}
