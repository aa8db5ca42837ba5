using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace Lanewright.Print;

/// <summary>The font that comes with the program. Without one the drawing library writes no text at all and says nothing, and a font of the
/// machine would make the same drawing look different elsewhere.</summary>
internal sealed class ShippedFont : ITypefaceProvider
{
    private static readonly SKTypeface Regular = Read("LiberationSans-Regular.ttf");
    private static readonly SKTypeface Bold = Read("LiberationSans-Bold.ttf");

    /// <inheritdoc/>
    public SKTypeface FromFamilyName(
        string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle) =>
        fontWeight >= SKFontStyleWeight.SemiBold ? Bold : Regular;

    private static SKTypeface Read(string file)
    {
        using var stream = typeof(ShippedFont).Assembly.GetManifestResourceStream("fonts/" + file)
            ?? throw new InvalidOperationException($"the font {file} is not in the program");
        using var copy = SKData.Create(stream);
        return SKTypeface.FromData(copy) ?? throw new InvalidOperationException($"the font {file} cannot be read");
    }
}
