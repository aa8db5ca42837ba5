using System.IO.Compression;
using System.Text;
using Lanewright.Print;

namespace Lanewright.Tests.Cli;

/// <summary>Drawings as PNG and PDF: there is text on them, and the same drawing gives the same bytes.</summary>
public sealed class PictureFormatTests
{
    private const string Words = "Quartz 42";

    private const string Svg = """
        <svg xmlns="http://www.w3.org/2000/svg" class="lw" viewBox="0 0 200 60" width="200" height="60">
        <style>.lw text{font-family:'Noto Sans',sans-serif;font-size:24px;fill:#000}.lw .paper{fill:#fff}</style>
        <rect class="paper" x="0" y="0" width="200" height="60"/>TEXT</svg>
        """;

    private static readonly string Written = Svg.Replace("TEXT", $"<text x=\"10\" y=\"40\">{Words}</text>", StringComparison.Ordinal);
    private static readonly string Empty = Svg.Replace("TEXT", "", StringComparison.Ordinal);

    [Fact]
    public void Pdf_HoldsItsTextInAFontOfItsOwn()
    {
        var pdf = Pdf(Written, Written);
        var text = Encoding.Latin1.GetString(pdf);
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        Assert.Contains("/FontFile2", text, StringComparison.Ordinal);
        Assert.Contains("LiberationSans", text, StringComparison.Ordinal);
        Assert.Equal(2, text.Split("/Type /Page\n").Length - 1);
        Assert.Equal([Words, Words], Shown(pdf));
        Assert.DoesNotContain("/FontFile2", Encoding.Latin1.GetString(Pdf(Empty)), StringComparison.Ordinal);
    }

    [Fact]
    public void SameDrawing_GivesTheSameBytes()
    {
        Assert.Equal(Pdf(Written), Pdf(Written));
        Assert.Equal(Png(Written), Png(Written));
    }

    [Fact]
    public void Png_HasInkWhereTheTextStands()
    {
        var (written, empty) = (Png(Written), Png(Empty));
        // Width and height stand behind the signature and the name of the first block.
        Assert.Equal([0, 0, 1, 144], written[16..20]);
        Assert.Equal([0, 0, 0, 120], written[20..24]);
        Assert.True(written.Length > empty.Length + 500, $"{written.Length} against {empty.Length}");
    }

    [Fact]
    public void Build_WritesThemBesideTheDrawings()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var plan = Path.Combine(folder, "plan.yaml");
            File.WriteAllText(plan, """
                lanewright: 1
                devices:
                  a: { model: fixed-32x400 }
                  b: { model: fixed-32x400 }
                links:
                  l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m }
                """);
            var run = Program.Run($"build {plan} --out {folder}/out --format pdf,png");
            Assert.True(run.Code == 0, run.Output + run.Error);
            var drawings = Directory.GetFiles(Path.Combine(folder, "out", "drawings")).Select(Path.GetFileName).ToList();
            Assert.NotEmpty(drawings);
            var vectors = drawings.Where(d => d!.EndsWith(".svg", StringComparison.Ordinal)).ToList();
            Assert.All(vectors, d => Assert.Contains(d![..^4] + ".png", drawings));
            var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(folder, "out", "drawings.pdf")));
            Assert.Equal(vectors.Count, pdf.Split("/Type /Page\n").Length - 1);
            Assert.Equal(2, Program.Run($"build {plan} --out {folder}/out --format gif").Code);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static byte[] Pdf(params string[] drawings)
    {
        using var stream = new MemoryStream();
        DrawingPrinter.Pdf("test", drawings.Select(d => (Func<Stream>)(() => new MemoryStream(Encoding.UTF8.GetBytes(d)))), stream);
        return stream.ToArray();
    }

    private static byte[] Png(string drawing)
    {
        using var svg = new MemoryStream(Encoding.UTF8.GetBytes(drawing));
        using var png = new MemoryStream();
        DrawingPrinter.Png(svg, png);
        return png.ToArray();
    }

    /// <summary>Texts as a reader of PDF finds them: glyph numbers of the page, turned into letters by the map beside the font.</summary>
    private static List<string> Shown(byte[] pdf)
    {
        var streams = Streams(pdf);
        var letters = new Dictionary<int, char>();
        foreach (var map in streams.Where(s => s.Contains("begincmap", StringComparison.Ordinal))) ReadMap(map, letters);
        var texts = new List<string>();
        foreach (var page in streams.Where(s => s.Contains("BT\n/F", StringComparison.Ordinal)))
        {
            var glyphs = System.Text.RegularExpressions.Regex.Matches(page, "<([0-9A-Fa-f]+)>").Select(m => m.Groups[1].Value);
            var hex = string.Concat(glyphs);
            var numbers = Enumerable.Range(0, hex.Length / 4).Select(i => Hex(hex.Substring(4 * i, 4)));
            texts.Add(string.Concat(numbers.Select(n => letters.GetValueOrDefault(n, '?'))));
        }
        return texts;
    }

    private static void ReadMap(string map, Dictionary<int, char> letters)
    {
        foreach (System.Text.RegularExpressions.Match m in System.Text.RegularExpressions.Regex.Matches(
            map, "^<([0-9A-Fa-f]{4})> <([0-9A-Fa-f]{4})>( <([0-9A-Fa-f]{4})>)?\r?$", System.Text.RegularExpressions.RegexOptions.Multiline))
        {
            var (from, second) = (Hex(m.Groups[1].Value), Hex(m.Groups[2].Value));
            if (!m.Groups[4].Success) letters[from] = (char)second;
            else for (var i = from; i <= second; i++) letters[i] = (char)(Hex(m.Groups[4].Value) + i - from);
        }
    }

    private static int Hex(string digits) => Convert.ToInt32(digits, 16);

    private static List<string> Streams(byte[] pdf)
    {
        var (text, found) = (Encoding.Latin1.GetString(pdf), new List<string>());
        const string begin = " stream\n";
        for (var at = text.IndexOf(begin, StringComparison.Ordinal); at >= 0; at = text.IndexOf(begin, at + 1, StringComparison.Ordinal))
        {
            var start = at + begin.Length;
            var end = text.IndexOf("endstream", start, StringComparison.Ordinal);
            try
            {
                using var packed = new ZLibStream(new MemoryStream(pdf, start, end - start), CompressionMode.Decompress);
                using var reader = new StreamReader(packed, Encoding.Latin1);
                found.Add(reader.ReadToEnd());
            }
            catch (InvalidDataException)
            {
                found.Add(text[start..end]);
            }
        }
        return found;
    }
}
