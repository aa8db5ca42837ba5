using System.Text;
using System.Xml.Linq;

namespace Lanewright.Tests.Deliverables;

/// <summary>Names that look like markup, formulas or control codes stay names.</summary>
public sealed class HostileNameTests
{
    private const string Script = "<script>alert(\"1\")</script>&'";
    private const string Plan = """
        lanewright: 1
        name: "<script>alert(\"1\")</script>&'"
        title: "</title><img src=x onerror=alert(1)>"
        revision: "<i>7</i>"
        date: "]]>&amp;"
        devices:
          a: { model: fixed-32x400, name: "<b>&\"'{n}" }
          b: { model: fixed-32x400, name: "=cmd|'/c'!A{n}" }
        links:
          "set <script> \x07": { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m }
        """;

    [Theory]
    [InlineData("drawings/K001-ribbon.svg")]
    [InlineData("drawings/K001-ladder.svg")]
    [InlineData("report.html")]
    public void Documents_HoldTheNamesAsTextOnly(string document)
    {
        var root = Delivered.Xml(PlanBlock.Compile(Plan), document);
        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "img" or "i");
        Assert.DoesNotContain(root.DescendantsAndSelf().Attributes(), a => a.Name.LocalName.StartsWith("on",
            StringComparison.OrdinalIgnoreCase));
        var words = root.DescendantsAndSelf().Where(e => !e.HasElements).Select(e => e.Value).ToList();
        Assert.Contains(words, w => w.Contains(Script, StringComparison.Ordinal));
        Assert.Contains(words, w => w.Contains("<b>&\"'1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("drawings/K001-ribbon.svg")]
    [InlineData("report.html")]
    public void Documents_HoldNoRawNameAndNoForbiddenCharacter(string document)
    {
        var text = Encoding.UTF8.GetString(Delivered.File(PlanBlock.Compile(Plan), document));
        Assert.DoesNotContain("<script", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\x07', text);
        Assert.Contains('\uFFFD', text);
    }

    [Fact]
    public void Report_FetchesNothingAndRunsNothing()
    {
        var root = Delivered.Xml(PlanBlock.Compile(Plan), "report.html");
        foreach (var link in root.DescendantsAndSelf().Attributes().Where(a => a.Name.LocalName is "href" or "src"))
            Assert.StartsWith("#", link.Value, StringComparison.Ordinal);
        var policy = root.Descendants(Delivered.Html + "meta").Single(m => (string?)m.Attribute("http-equiv") == "Content-Security-Policy");
        Assert.StartsWith("default-src 'none'", policy.Attribute("content")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", root.Descendants(Delivered.Html + "style").Single().Value, StringComparison.Ordinal);
    }
}
