using Lanewright.Deliverables.Markup;

namespace Lanewright.Deliverables.Drawings;

/// <summary>A sheet of drawing: paper, heading, the drawing itself and the title block.</summary>
internal static class Sheet
{
    /// <summary>Width of every sheet.</summary>
    public const double Width = 1200;

    /// <summary>Space kept free at the sides.</summary>
    public const double Margin = 28;

    /// <summary>Where the drawing begins below the heading.</summary>
    public const double Top = 84;

    /// <summary>How much lower the drawing begins where a caution stands below the heading.</summary>
    public const double CautionStep = 18;

    private const double FootSpace = 18;
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Writes a sheet.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="head">What it is.</param>
    /// <param name="block">Its title block.</param>
    /// <param name="bottom">Where the drawing ends.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    /// <param name="draw">Draws what is on it.</param>
    public static void Write(MarkupWriter markup, SheetHead head, TitleBlock block, double bottom, bool isFile, Action<Canvas> draw)
    {
        var height = bottom + FootSpace + block.HeightWithReasons + Margin;
        var size = $"0 0 {MarkupWriter.Number(Width)} {MarkupWriter.Number(height)}";
        var (title, description) = (head.Id + "-title", head.Id + "-desc");
        var named = title + " " + description;
        if (isFile)
            markup.Open("svg", ("xmlns", Namespace), ("class", "lw"), ("viewBox", size), ("width", MarkupWriter.Number(Width)),
                ("height", MarkupWriter.Number(height)), ("role", "img"), ("aria-labelledby", named));
        else
            markup.Open("svg", ("xmlns", Namespace), ("class", "lw"), ("viewBox", size), ("role", "img"), ("aria-labelledby", named));
        markup.Element("title", head.Title + " " + block.Classes, ("id", title));
        markup.Element("desc", $"{head.Description} Title block: {block.Words}.", ("id", description));
        if (isFile)
        {
            markup.Open("style");
            markup.Trusted(DrawingStyle.Sheet);
            markup.Close();
        }
        var canvas = new Canvas(markup);
        canvas.Box(0, 0, Width, height, "paper");
        Heading(canvas, head);
        draw(canvas);
        block.Draw(canvas, bottom + FootSpace);
        markup.Close();
    }

    private static void Heading(Canvas canvas, SheetHead head)
    {
        var room = Width - (2 * Margin);
        canvas.Text(Margin, 42, TextFit.Short(head.Title, room, 19, bold: true), "title");
        canvas.Text(Margin, 63, TextFit.Short(head.Subtitle, room, 13), "sub soft");
        if (head.Caution.Length > 0) canvas.Text(Margin, 63 + CautionStep, head.Caution, "sub soft");
    }
}
