using DocumentFormat.OpenXml.Spreadsheet;
using Lanewright.Deliverables.Tables;

namespace Lanewright.Deliverables.Workbook;

/// <summary>The looks of cells: one for each kind of column, and one for headings.</summary>
internal static class WorkbookStyles
{
    /// <summary>Index of the look of a heading.</summary>
    public const uint Heading = 1;

    private const uint FirstOwnFormat = 164;

    /// <summary>Index of the look of a cell.</summary>
    public static uint Of(ColumnKind kind) => kind switch
    {
        ColumnKind.Whole => 3,
        ColumnKind.Money => 4,
        ColumnKind.Real => 5,
        _ => 2,
    };

    /// <summary>The style sheet.</summary>
    public static Stylesheet Create() => new(
        new NumberingFormats(Format(0, "#,##0"), Format(1, "#,##0.00"), Format(2, "#,##0.0##")) { Count = 3 },
        new Fonts(new Font(new FontSize { Val = 10 }, new FontName { Val = "Liberation Sans" }),
            new Font(new Bold(), new FontSize { Val = 10 }, new FontName { Val = "Liberation Sans" })) { Count = 2 },
        new Fills(Fill(PatternValues.None), Fill(PatternValues.Gray125), HeadingFill()) { Count = 3 },
        new Borders(Border(null), Border(BorderStyleValues.Thin)) { Count = 2 },
        new CellStyleFormats(new CellFormat { NumberFormatId = 0, FontId = 0, FillId = 0, BorderId = 0 }) { Count = 1 },
        new CellFormats(
            new CellFormat { FormatId = 0 },
            new CellFormat(new Alignment { Vertical = VerticalAlignmentValues.Center }) { FormatId = 0, FontId = 1, FillId = 2,
                BorderId = 1, ApplyFont = true, ApplyFill = true, ApplyBorder = true, ApplyAlignment = true },
            new CellFormat { FormatId = 0, NumberFormatId = 49, ApplyNumberFormat = true },
            Number(0),
            Number(1),
            Number(2)) { Count = 6 },
        new CellStyles(new CellStyle { Name = "Normal", FormatId = 0, BuiltinId = 0 }) { Count = 1 });

    private static NumberingFormat Format(uint index, string code) => new() { NumberFormatId = FirstOwnFormat + index, FormatCode = code };

    private static CellFormat Number(uint index) => new() { FormatId = 0, NumberFormatId = FirstOwnFormat + index,
        ApplyNumberFormat = true };

    private static Fill Fill(PatternValues pattern) => new(new PatternFill { PatternType = pattern });

    private static Fill HeadingFill() => new(new PatternFill(new ForegroundColor { Rgb = "FFE9E3D4" },
        new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });

    private static Border Border(BorderStyleValues? bottom) => new(
        new LeftBorder(), new RightBorder(), new TopBorder(), bottom is { } style ? new BottomBorder { Style = style }
            : new BottomBorder(), new DiagonalBorder());
}
