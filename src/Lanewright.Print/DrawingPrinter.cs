using SkiaSharp;
using Svg.Skia;

namespace Lanewright.Print;

/// <summary>Turns SVG drawings into PNG and PDF. The same drawing gives the same bytes: no date and no name of a machine goes in.</summary>
public static class DrawingPrinter
{
    /// <summary>Dots of a PNG for each unit of a drawing: sheets 1200 wide become 2400 dots.</summary>
    public const int Dots = 2;

    private const int BestQuality = 100;

    /// <summary>Writes a drawing as PNG.</summary>
    /// <param name="svg">The drawing.</param>
    /// <param name="png">Where to.</param>
    public static void Png(Stream svg, Stream png)
    {
        using var drawing = Load(svg);
        var size = Picture(drawing).CullRect;
        using var bitmap = new SKBitmap((int)MathF.Ceiling(size.Width * Dots), (int)MathF.Ceiling(size.Height * Dots));
        using var canvas = new SKCanvas(bitmap);
        canvas.Scale(Dots);
        canvas.DrawPicture(Picture(drawing));
        canvas.Flush();
        using var encoded = bitmap.Encode(SKEncodedImageFormat.Png, BestQuality);
        encoded.SaveTo(png);
    }

    /// <summary>Writes drawings as one PDF, a page each, in the size of the drawing.</summary>
    /// <param name="title">Title of the document.</param>
    /// <param name="drawings">Opens each drawing in turn.</param>
    /// <param name="pdf">Where to.</param>
    public static void Pdf(string title, IEnumerable<Func<Stream>> drawings, Stream pdf)
    {
        using var document = SKDocument.CreatePdf(pdf, new SKDocumentPdfMetadata { Title = title, RasterDpi = 144, EncodingQuality = 101 });
        // Pictures are played back when the document closes.
        var kept = new List<SKSvg>();
        try
        {
            foreach (var open in drawings)
            {
                using var stream = open();
                var drawing = Load(stream);
                kept.Add(drawing);
                var picture = Picture(drawing);
                var canvas = document.BeginPage(picture.CullRect.Width, picture.CullRect.Height);
                canvas.DrawPicture(picture);
                document.EndPage();
            }
            document.Close();
        }
        finally
        {
            kept.ForEach(d => d.Dispose());
        }
    }

    private static SKSvg Load(Stream stream)
    {
        var svg = new SKSvg();
        (svg.Settings.TypefaceProviders ??= []).Insert(0, new ShippedFont());
        svg.Load(stream);
        return svg;
    }

    private static SKPicture Picture(SKSvg svg) => svg.Picture ?? throw new InvalidDataException("the drawing cannot be read as SVG");
}
