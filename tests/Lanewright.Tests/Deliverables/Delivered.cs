using System.Xml.Linq;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables;
using Lanewright.Rules;

namespace Lanewright.Tests.Deliverables;

/// <summary>Plans to draw, and the documents written from them.</summary>
internal static class Delivered
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    public static readonly XNamespace Html = "http://www.w3.org/1999/xhtml";

    private const string Devices = """
        lanewright: 1
        name: drawn
        devices:
          a4: { model: fixed-32x400, count: 2 }
          b4: { model: fixed-32x400, count: 2 }
          a1: { model: fixed-32x100, count: 4 }
          b1: { model: fixed-32x100, count: 4 }
          a8: { model: fixed-32x800, count: 2 }
          b8: { model: fixed-32x800, count: 2 }
          x16: { model: fixed-64x1600, count: 2 }
          s10: { model: fixed-48x10-4x40, count: 2 }
          t10: { model: fixed-48x10-4x40, count: 2 }
          h2: { model: server-2u, cards: nic-2x200, count: 4 }
          h1: { model: server-2u, cards: [nic-1x100s x4], count: 4 }
          mg: { model: fixed-48x1-4x10, count: 1 }

        """;

    /// <summary>A plan with these link statements, one a line.</summary>
    public static JudgedPlan Plan(params string[] links) =>
        PlanBlock.Compile(Devices + "links:\n" + string.Join('\n', links.Select(l => "  " + l)) + "\n");

    /// <summary>All documents of a judged by name.</summary>
    public static Dictionary<string, byte[]> Files(JudgedPlan judged)
    {
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var document in DeliverySet.Of(judged))
        {
            using var stream = new MemoryStream();
            document.Write(stream);
            files.Add(document.Name, stream.ToArray());
        }
        return files;
    }

    /// <summary>The one document of a name.</summary>
    public static byte[] File(JudgedPlan judged, string name)
    {
        using var stream = new MemoryStream();
        DeliverySet.Of(judged).Single(d => d.Name == name).Write(stream);
        return stream.ToArray();
    }

    /// <summary>The lines of a document.</summary>
    public static string[] Table(JudgedPlan judged, string name) =>
        System.Text.Encoding.UTF8.GetString(File(judged, name)).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>A document read as XML, which any drawing and the report have to be.</summary>
    public static XElement Xml(JudgedPlan judged, string name)
    {
        using var stream = new MemoryStream(File(judged, name));
        var settings = new System.Xml.XmlReaderSettings { DtdProcessing = System.Xml.DtdProcessing.Ignore };
        using var reader = System.Xml.XmlReader.Create(stream, settings);
        return XDocument.Load(reader, LoadOptions.PreserveWhitespace).Root!;
    }

    /// <summary>The ribbon of the only way of a plan.</summary>
    public static XElement Ribbon(JudgedPlan judged) => Xml(judged, $"drawings/{OnlyWay(judged).Name}-ribbon.svg");

    /// <summary>The ladder of the only way of a plan.</summary>
    public static XElement Ladder(JudgedPlan judged) => Xml(judged, $"drawings/{OnlyWay(judged).Name}-ladder.svg");

    /// <summary>The ways of a plan.</summary>
    public static LinkWay[] Ways(JudgedPlan judged) => [.. LinkWays.Of(judged.Plan!, judged.Design!)];

    /// <summary>The only way of a plan.</summary>
    public static LinkWay OnlyWay(JudgedPlan judged) => Assert.Single(Ways(judged));

    /// <summary>Elements that carry a class.</summary>
    public static XElement[] WithClass(this XElement root, string name) =>
        [.. root.Descendants().Where(e => ((string?)e.Attribute("class") ?? "").Split(' ').Contains(name))];

    /// <summary>All words of a drawing, one text a line.</summary>
    public static string[] Words(this XElement root) => [.. root.Descendants(Svg + "text").Select(t => t.Value)];

    /// <summary>A number in an attribute.</summary>
    public static double Real(this XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, System.Globalization.CultureInfo.InvariantCulture);
}
