using System.Net;
using System.Net.Sockets;
using Lanewright.Workbench;

namespace Lanewright.Tests.Workbench;

/// <summary>The workbench on another address than loopback. What is held against: cookies of RFC 6265, Retry-After of RFC 9110 10.2.3,
/// status 429 of RFC 6585.</summary>
[Collection(BrowserCollection.Name)]
public sealed class GateTests(Chromium chromium)
{
    private const string Plan = "lanewright: 1\nname: small\ntitle: A secret plan\n";
    private const string Phrase = "four words far apart";

    /// <summary>Another address of this machine that is no loopback of the usual kind and is there on every machine.</summary>
    private static readonly IPAddress Other = IPAddress.Parse("127.0.0.2");

    [Theory]
    [InlineData("")]
    [InlineData("short")]
    [InlineData("            ")]
    [InlineData("aaaaaaaaaaaaaaaa")]
    public void PassphraseThatIsEasyToGuess_IsRefusedInWords(string phrase)
    {
        var fault = Assert.Throws<WorkbenchFault>(() => Elsewhere.Of(IPAddress.Any, phrase));
        Assert.Contains("too easy to guess", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AddressThisMachineHasNot_IsSaidInWords()
    {
        // 192.0.2.0/24 is for documentation (RFC 5737), its last address for nobody at all.
        var fault = await Assert.ThrowsAsync<WorkbenchFault>(() =>
            OpenedPlan.OfText(Plan, Elsewhere.Of(IPAddress.Parse("192.0.2.254"), Phrase)));
        Assert.Contains("192.0.2.254", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("brief")]
    [InlineData("text?file=plan.yaml")]
    [InlineData("state?seen=0")]
    [InlineData("files/findings.json")]
    [InlineData("assets/workbench.js")]
    public async Task WithoutThePassphrase_NothingOfThePlanIsShown(string place)
    {
        await using var plan = await Opened();
        foreach (var token in new[] { "", "000000000000000000000000000000000000000000000000/" })
        {
            var (status, text) = await Get(plan, token + place);
            Assert.Equal(HttpStatusCode.Unauthorized, status);
            Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
            Assert.DoesNotContain(Phrase, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Passphrase_LetsInForAsLongAsTheCookieIsKept()
    {
        await using var plan = await Opened();
        var entered = await Enter(plan, Phrase, "//evil.example/");
        Assert.Equal(HttpStatusCode.SeeOther, entered.StatusCode);
        var place = entered.Headers.Location!.ToString();
        Assert.Matches("^/[0-9a-f]{48}/brief$", place);
        var cookie = Assert.Single(entered.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        var own = ("Cookie", cookie.Split(';')[0]);
        Assert.Equal(HttpStatusCode.OK, (await Get(plan, place[1..], own)).Status);
        // The cookie alone opens nothing but the way to the token, and the token alone nothing at all.
        Assert.Equal(HttpStatusCode.NotFound, (await Get(plan, "brief", own)).Status);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(plan, place[1..])).Status);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(plan, place[1..], ("Cookie", own.Item2[..^2] + "00"))).Status);
    }

    [Fact]
    public async Task WrongGuesses_HaveToWait()
    {
        await using var plan = await Opened();
        for (var i = 0; i < 5; i++)
        {
            using var wrong = await Enter(plan, Phrase + i, "/");
            Assert.Equal(HttpStatusCode.Unauthorized, wrong.StatusCode);
            Assert.False(wrong.Headers.Contains("Set-Cookie"));
        }
        // The right one is not looked at either, so that waiting is the same whatever is guessed.
        using var sixth = await Enter(plan, Phrase, "/");
        Assert.Equal(HttpStatusCode.TooManyRequests, sixth.StatusCode);
        Assert.InRange(sixth.Headers.RetryAfter!.Delta!.Value.TotalSeconds, 1, 60);
        Assert.False(sixth.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("")]
    public async Task PostOfAnotherPage_IsNoGuess(string origin)
    {
        await using var plan = await Opened();
        using var entered = await Enter(plan, Phrase, "/", origin);
        Assert.Equal(HttpStatusCode.Forbidden, entered.StatusCode);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    public async Task OtherNameThanTheNumber_StaysOutside(string host)
    {
        await using var plan = await Opened();
        Assert.Equal(HttpStatusCode.Forbidden, (await Get(plan, "", ("Host", $"{host}:{plan.Server.Port}"))).Status);
    }

    [Fact]
    public async Task OneAddress_IsServedAndNoOther()
    {
        await using var plan = await Opened();
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(IPAddress.Loopback, plan.Server.Port));
    }

    [Fact]
    public async Task FormLargerThanAPassphrase_IsRefused()
    {
        await using var plan = await Opened();
        using var entered = await Enter(plan, new string('a', 5000), "/");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, entered.StatusCode);
    }

    [Fact]
    public async Task Browser_GivesThePassphraseAndGetsToTheSheetItAskedFor()
    {
        await using var plan = await Opened();
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Server.Address.ToString());
        await Shots.Take(page, "Gate");
        await page.Locator("#passphrase").FillAsync("four words far aparx");
        await page.Keyboard.PressAsync("Enter");
        await Microsoft.Playwright.Assertions.Expect(page.Locator("[role=alert]")).ToContainTextAsync("not the passphrase");
        await page.Locator("#passphrase").FillAsync(Phrase);
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#register").WaitForAsync();
        var sheet = page.Url.Replace("/brief", "/plan", StringComparison.Ordinal);
        var (other, _) = await chromium.Window();
        await other.GotoAsync(sheet);
        await other.Locator("#passphrase").FillAsync(Phrase);
        await other.Keyboard.PressAsync("Enter");
        var area = other.Locator("#editor textarea");
        await Microsoft.Playwright.Assertions.Expect(area).ToHaveValueAsync(Plan);
        await area.FocusAsync();
        await other.Keyboard.PressAsync("Control+End");
        await other.Keyboard.TypeAsync("revision: B");
        await Microsoft.Playwright.Assertions.Expect(page.Locator("#block")).ToContainTextAsync("not saved");
        Assert.Empty(faults);
    }

    private static Task<OpenedPlan> Opened() => OpenedPlan.OfText(Plan, Elsewhere.Of(Other, Phrase));

    private static string Root(OpenedPlan plan) => plan.Server.Address.ToString();

    private static async Task<(HttpStatusCode Status, string Text)> Get(
        OpenedPlan plan, string place, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, Root(plan) + place);
        return await plan.Send(request, headers);
    }

    private static async Task<HttpResponseMessage> Enter(OpenedPlan plan, string phrase, string next, string? origin = null)
    {
        using var http = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, Root(plan) + "enter")
        {
            Content = new FormUrlEncodedContent([new("passphrase", phrase), new("next", next)]),
        };
        if (origin != "") request.Headers.TryAddWithoutValidation("Origin", origin ?? Root(plan).TrimEnd('/'));
        return await http.SendAsync(request);
    }
}
