using System.Collections.Immutable;
using System.Xml;
using System.Xml.Linq;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>A graph read from GraphML: points with names and, where they have them, degrees of longitude and latitude; and edges between
/// them.</summary>
/// <param name="Points">The points in the order of the file.</param>
/// <param name="Edges">The edges in the order of the file, by the numbers of their points.</param>
public sealed record GraphText(
    ImmutableArray<(string Name, double? Longitude, double? Latitude)> Points, ImmutableArray<(int From, int To, string Name)> Edges)
{
    private const int MostCharacters = 64 * 1024 * 1024;
    private const double Round = 180;

    /// <summary>Reads a file.</summary>
    /// <param name="source">Its text.</param>
    /// <param name="problem">Why nothing could be read; empty when something was.</param>
    public static GraphText? Read(SourceText source, out string problem)
    {
        problem = "";
        try
        {
            var settings = new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                MaxCharactersInDocument = MostCharacters,
            };
            using var text = new StringReader(source.Content);
            using var reader = XmlReader.Create(text, settings);
            var graph = Of(XDocument.Load(reader));
            if (graph.Points.IsEmpty) problem = "it holds no points";
            return graph.Points.IsEmpty ? null : graph;
        }
        catch (XmlException fault)
        {
            problem = $"line {Numerals.Whole(fault.LineNumber)} is no XML that can be read";
            return null;
        }
    }

    private static GraphText Of(XDocument document)
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var key in Named(document, "key"))
            if (key.Attribute("id")?.Value is { } id) fields[id] = key.Attribute("attr.name")?.Value ?? id;
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var points = ImmutableArray.CreateBuilder<(string, double?, double?)>();
        foreach (var node in Named(document, "node"))
        {
            if (node.Attribute("id")?.Value is not { } id || !numbers.TryAdd(id, points.Count)) continue;
            var values = Values(node, fields);
            var label = values.GetValueOrDefault("label", "").Trim();
            points.Add((label.Length > 0 ? label : id, Degrees(values, "Longitude"), Degrees(values, "Latitude")));
        }
        var edges = ImmutableArray.CreateBuilder<(int, int, string)>();
        foreach (var edge in Named(document, "edge"))
        {
            if (edge.Attribute("source")?.Value is not { } from || edge.Attribute("target")?.Value is not { } to) continue;
            if (!numbers.TryGetValue(from, out var a) || !numbers.TryGetValue(to, out var b)) continue;
            edges.Add((a, b, Values(edge, fields).GetValueOrDefault("LinkLabel", "").Trim()));
        }
        return new GraphText(points.ToImmutable(), edges.ToImmutable());
    }

    private static IEnumerable<XElement> Named(XDocument document, string name) =>
        document.Descendants().Where(e => e.Name.LocalName == name);

    private static Dictionary<string, string> Values(XElement element, Dictionary<string, string> fields)
    {
        var values = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var part in element.Elements().Where(e => e.Name.LocalName == "data"))
            if (part.Attribute("key")?.Value is { } key) values[fields.GetValueOrDefault(key, key)] = part.Value;
        return values;
    }

    private static double? Degrees(Dictionary<string, string> values, string field) =>
        values.TryGetValue(field, out var text) && Numerals.TryReal(text.Trim(), out var value) && Math.Abs(value) <= Round ? value : null;
}
