using System.Net;

namespace Lanewright.Tests.Workbench;

/// <summary>Names that look like markup stay names on every sheet.</summary>
public sealed class HostilePageTests
{
    internal const string Plan = """
        lanewright: 1
        name: "<script>alert(1)</script>"
        title: "</title><img src=x onerror=alert(2)>"
        revision: "<i>7</i>"
        devices:
          "<b>g": { model: fixed-32x400, count: 2, name: "<img src=x onerror=alert(3)>{n}" }
          "b\"'": { model: fixed-32x400, count: 2, name: "\"'><svg onload=alert(4)>{n}" }
        links:
          "set</textarea><script>alert(5)</script>": { from: "<b>g", to: "b\"'", rate: 400G, type: 400GBASE-DR4, length: 100 m }
        """;

    [Theory]
    [InlineData("brief")]
    [InlineData("links")]
    [InlineData("links/L000001")]
    [InlineData("classes/K001")]
    [InlineData("findings")]
    [InlineData("plan")]
    [InlineData("parts")]
    [InlineData("fabric")]
    [InlineData("documents")]
    [InlineData("find?q=alert")]
    [InlineData("find?q=%3Cscript%3Ealert(6)%3C/script%3E")]
    [InlineData("links?q=%22%3E%3Cscript%3Ealert(7)%3C/script%3E")]
    [InlineData("devices/%3Cimg%20src=x%20onerror=alert(3)%3E1")]
    [InlineData("%3Cscript%3Ealert(8)%3C/script%3E")]
    [InlineData("rules/%3Cscript%3E")]
    public async Task Sheet_HoldsNoNameAsMarkup(string sheet)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        var (_, page) = await plan.Ready(sheet);
        Assert.DoesNotContain("<script>", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<svg onload", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>g", page, StringComparison.Ordinal);
        Assert.Contains("&lt;", page, StringComparison.Ordinal);
        // What may carry a script is the workbench's own element alone.
        Assert.Equal(1, page.Split("<script", StringSplitOptions.None).Length - 1);
        Assert.DoesNotMatch("""<[^>]* on\w+=""", page);
    }

    [Fact]
    public async Task Device_IsFoundUnderItsHostileName()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        var (status, page) = await plan.Ready("devices/" + Uri.EscapeDataString("<img src=x onerror=alert(3)>1"));
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains("L000001", page, StringComparison.Ordinal);
    }
}
