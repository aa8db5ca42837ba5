using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Quantities;

namespace Lanewright.Workbench;

/// <summary>The style and the script of the pages, shipped inside the program.</summary>
internal static class Assets
{
    private const string Prefix = "assets/";

    private static readonly FrozenDictionary<string, (string Type, string Text)> All = Read();

    /// <summary>Colours of drawings as they are written, and the ink of the page that stands for each: paper may be dark.</summary>
    private static (string Written, string Ink)[] Inks =>
    [
        (DrawingStyle.Paper, "var(--paper)"), (DrawingStyle.Ink, "var(--ink)"), (DrawingStyle.Accent, "var(--accent)"),
        ("#fffdf8", "var(--white)"), ("#5c6168", "var(--soft)"), ("#f0ebdf", "var(--block)"), ("#b9b4a8", "var(--faint)"),
        ("#8d897f", "var(--dim)"),
    ];

    /// <summary>A file of the pages by name; null when there is none.</summary>
    public static (string Type, string Text)? Find(string name) => All.TryGetValue(name, out var found) ? found : null;

    private static FrozenDictionary<string, (string, string)> Read()
    {
        var assembly = typeof(Assets).Assembly;
        var files = new Dictionary<string, (string, string)>(StringComparer.Ordinal);
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException(name);
            using var reader = new StreamReader(stream);
            files[name[Prefix.Length..]] = (TypeOf(name), reader.ReadToEnd());
        }
        files["drawings.css"] = ("text/css; charset=utf-8", InPageInks(DrawingStyle.Sheet) + OnDarkPaper());
        return files.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>Colours of loads turned round, so that on dark paper, too, what is fullest stands out most; and numbers on fibres, whose
    /// colours are the same on any paper.</summary>
    private static string OnDarkPaper()
    {
        var rules = new StringBuilder("\n@media screen and (prefers-color-scheme: dark) {\n");
        for (var step = 0; step <= LoadColour.Steps; step++)
        {
            var (light, dark) = (LoadColour.Of(Part(step)), LoadColour.Of(Part(LoadColour.Steps - step)));
            rules.Append(CultureInfo.InvariantCulture, $".lw [fill='{light}'] {{ fill: {dark} }} ");
            rules.Append(CultureInfo.InvariantCulture, $".lw [stroke='{light}'] {{ stroke: {dark} }}\n");
        }
        rules.Append(CultureInfo.InvariantCulture, $".lw .place.lit + text {{ fill: {DrawingStyle.Ink} }} .lw .place.lit + text.light ");
        rules.Append("{ fill: #fffdf8 }\n}\n");
        rules.Append(CultureInfo.InvariantCulture, $".lw [fill='{DrawingStyle.Accent}'] {{ fill: var(--accent) }} ");
        rules.Append(CultureInfo.InvariantCulture, $".lw [stroke='{DrawingStyle.Accent}'] {{ stroke: var(--accent) }}\n");
        return rules.ToString();
    }

    private static Share Part(int step) => Share.From(step / (double)LoadColour.Steps);

    private static string InPageInks(string style) => Inks.Aggregate(style, (text, ink) => text.Replace(ink.Written, ink.Ink,
        StringComparison.OrdinalIgnoreCase));

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        _ => throw new InvalidOperationException(name),
    };
}
