using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using Lanewright.Workbench;

namespace Lanewright.Tests.Workbench;

/// <summary>Who is let in. What is held against: the Fetch Metadata and Origin headers of the Fetch standard (WHATWG), Host of RFC 9110
/// 7.2, and Content Security Policy Level 3 (W3C).</summary>
public sealed class DoorTests
{
    private const string Plan = "lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 2 } }\n";

    public static TheoryData<string> Sheets => new("brief", "options", "floor", "racks", "fabric", "links", "lines", "parts", "findings",
        "plan", "compare", "documents", "devices/a-1", "rules/LW2401", "find?q=a");

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task EverySheet_OpensUnderItsAddressAndGuardsItself(string sheet)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        using var http = new HttpClient();
        using var answer = await http.GetAsync(plan.Root + sheet);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:{0}")]
    [InlineData("127.0.0.1.evil.example:{0}")]
    [InlineData("127.0.0.1:1")]
    [InlineData("127.0.0.1")]
    [InlineData("0.0.0.0:{0}")]
    public async Task NameThatWasMadeToPointHere_StaysOutside(string host)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var name = host.Replace("{0}", Port(plan), StringComparison.Ordinal);
        var (status, text) = await plan.Get("brief", ("Host", name));
        Assert.Equal(HttpStatusCode.Forbidden, status);
        Assert.DoesNotContain("small", text, StringComparison.Ordinal);
    }

    private static string Port(OpenedPlan plan) => plan.Server.Port.ToString(CultureInfo.InvariantCulture);

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("https://127.0.0.1:{0}")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("null")]
    [InlineData("")]
    public async Task PostOfAnotherPage_ChangesNothing(string origin)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        var from = origin.Replace("{0}", Port(plan), StringComparison.Ordinal);
        (string, string)[] headers = origin.Length == 0 ? [] : [("Origin", from)];
        string[] places = [$"type?file=plan.yaml&version={version}", $"save?file=plan.yaml&version={version}", "discard?file=plan.yaml"];
        foreach (var place in places)
            Assert.Equal(HttpStatusCode.Forbidden, (await plan.Post(place, "name: taken over", headers)).Status);
        Assert.Equal(Plan, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
        Assert.Equal(Plan, plan.OnDisk("plan.yaml"));
    }

    [Fact]
    public async Task LookOfAnotherPage_StaysOutsideUnlessAPersonFollowsALink()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        Assert.Equal(HttpStatusCode.Forbidden, (await plan.Get("text?file=plan.yaml", ("Origin", "http://evil.example"))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await plan.Get("brief", ("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", "no-cors"),
            ("Sec-Fetch-Dest", "script"))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await plan.Get("brief", ("Sec-Fetch-Site", "same-site"), ("Sec-Fetch-Mode", "navigate"),
            ("Sec-Fetch-Dest", "iframe"))).Status);
        Assert.Equal(HttpStatusCode.OK, (await plan.Get("brief", ("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", "navigate"),
            ("Sec-Fetch-Dest", "document"))).Status);
    }

    [Theory]
    [InlineData("")]
    [InlineData("brief")]
    [InlineData("000000000000000000000000000000000000000000000000/brief")]
    [InlineData("%2e/brief")]
    [InlineData("assets/workbench.js")]
    public async Task AddressWithoutTheToken_ShowsNothing(string place)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        using var request = new HttpRequestMessage(HttpMethod.Get, $"{plan.Origin}/{place}");
        var (status, text) = await plan.Send(request);
        Assert.Equal(HttpStatusCode.NotFound, status);
        Assert.DoesNotContain("small", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tokens_AreLongAndNeverTheSame()
    {
        await using var one = await OpenedPlan.OfText(Plan);
        await using var other = await OpenedPlan.OfText(Plan);
        var (a, b) = (one.Server.Address.Segments[1], other.Server.Address.Segments[1]);
        Assert.Equal(49, a.Length);
        Assert.NotEqual(a, b);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    public async Task OtherMethods_AreRefused(string method)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        using var request = new HttpRequestMessage(new HttpMethod(method), plan.Root + "text?file=plan.yaml");
        Assert.Equal(HttpStatusCode.MethodNotAllowed, (await plan.Send(request, ("Origin", plan.Origin))).Status);
    }

    [Fact]
    public async Task TextTooLarge_IsRefusedInWords()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        var (status, text) = await plan.Post($"type?file=plan.yaml&version={version}", new string('#', WorkbenchServer.LargestBody + 1));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Contains("larger", text, StringComparison.Ordinal);
        Assert.Equal(Plan, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
    }

    [Fact]
    public async Task Server_ListensOnLoopbackOnly()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var outside = (await Dns.GetHostAddressesAsync(Dns.GetHostName())).Where(a => !IPAddress.IsLoopback(a)).ToList();
        Assert.SkipWhen(outside.Count == 0, "this machine has no other address");
        foreach (var address in outside)
        {
            using var socket = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
            await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(address, plan.Server.Port));
        }
    }

    [Fact]
    public async Task BrokenRequest_GetsNoStackTrace()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, plan.Server.Port);
        await using var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes("GET /\u0001 HTTP/1.1\r\nHost: a b\r\n\r\n"));
        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync();
        Assert.StartsWith("HTTP/1.1 400", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }
}
