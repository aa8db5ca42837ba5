using Lanewright.Deliverables;
using Lanewright.Text;

namespace Lanewright.Fuzz;

/// <summary>Tears a text by a seed and runs the whole program over it.</summary>
internal static class TornText
{
    private static readonly string[] Pieces =
    [
        "{", "}", "[", "]", ":", ",", "&a", "*a", "#", "|", ">", "-", "'", "\"", "\t", "\n", "  ", "---\n", "...\n",
        "!!int ", "? ", "<<: ", "0", "-1",
        "1e308 m", "99999999999999999999", "400G", "\0", "\u2028", "\ud83d\ude00", "null", "~", "1..4096", "4x100G", "{n:9}", "../..",
    ];

    /// <summary>The fault a torn text brings about, or null.</summary>
    public static string? Try(IReadOnlyList<string> texts, int seed)
    {
        var random = new Random(seed);
        var text = Tear(texts[random.Next(texts.Count)], texts, random);
        var other = Tear(texts[random.Next(texts.Count)], texts, random);
        try
        {
            var files = new TextFiles([new("plan.yaml", text), new("other.yaml", other), new("other.csv", other)]);
            var judged = Compilation.Of(files, "plan.yaml");
            foreach (var document in DeliverySet.Of(judged)) document.Write(Stream.Null);
            return null;
        }
        catch (Exception fault)
        {
            return fault + "\n---- text ----\n" + text;
        }
    }

    private static string Tear(string text, IReadOnlyList<string> texts, Random random)
    {
        if (text.Length > 6000) text = text[random.Next(text.Length - 6000)..][..6000];
        if (random.Next(3) == 0) text = "lanewright: 1\n" + text;
        for (var i = random.Next(1, 10); i > 0 && text.Length > 2; i--)
        {
            var at = random.Next(text.Length);
            var length = Math.Min(random.Next(1, 80), text.Length - at);
            text = random.Next(6) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, text.Substring(at, length)),
                2 => text.Insert(at, Pieces[random.Next(Pieces.Length)]),
                3 => text.Insert(random.Next(text.Length), text.Substring(at, length)),
                4 => text[..at] + (char)random.Next(1, 0x3000) + text[(at + 1)..],
                _ => text.Insert(at, Slice(texts[random.Next(texts.Count)], random)),
            };
        }
        return text;
    }

    private static string Slice(string text, Random random)
    {
        var at = random.Next(text.Length);
        return text.Substring(at, Math.Min(200, text.Length - at));
    }
}
