using System.Globalization;
using System.Net;
using Lanewright.Deliverables.Markup;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Lanewright.Workbench.Door;

/// <summary>The gate for other machines: nobody sees anything of the plan before giving the passphrase.</summary>
internal sealed class Gate(Passphrase passphrase, int port, string token, TimeProvider clock)
{
    private const string Enter = "/enter";
    private const string Style = "/enter/workbench.css";
    private const int LargestForm = 4096;
    private const int MostWaiting = 8;
    private const string Html = "text/html; charset=utf-8";

    private readonly Guesses guesses = new(clock);
    private readonly Visitors visitors = new(clock);
    private readonly Lock turn = new();
    private int waiting;

    private string Cookie { get; } = "lanewright-" + port.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a request comes from somebody who gave the passphrase.</summary>
    public bool IsIn(HttpRequest request) => visitors.Knows(request.Cookies[Cookie]);

    /// <summary>Answers somebody who has not given it.</summary>
    public Task Serve(HttpContext http)
    {
        var path = http.Request.Path.Value ?? "";
        if (path == Style && Assets.Find("workbench.css") is { } style)
            return Reply.Text(http.Response, StatusCodes.Status200OK, style.Type, style.Text);
        return HttpMethods.IsPost(http.Request.Method) && path == Enter ? Guess(http)
            : Ask(http, StatusCodes.Status401Unauthorized, "", path + http.Request.QueryString);
    }

    private async Task Guess(HttpContext http)
    {
        var from = http.Connection.RemoteIpAddress ?? IPAddress.None;
        var (guess, next) = await Form(http).ConfigureAwait(false);
        var wait = waiting >= MostWaiting ? TimeSpan.FromSeconds(1) : guesses.Take(from);
        if (wait > TimeSpan.Zero)
        {
            var seconds = ((int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
            http.Response.Headers.RetryAfter = seconds;
            await Ask(http, StatusCodes.Status429TooManyRequests, $"That was wrong too often. Wait {seconds} s and try again.", next)
                .ConfigureAwait(false);
            return;
        }
        if (!await IsRight(guess).ConfigureAwait(false))
        {
            await Ask(http, StatusCodes.Status401Unauthorized, "That is not the passphrase.", next).ConfigureAwait(false);
            return;
        }
        guesses.Forget(from);
        http.Response.Cookies.Append(Cookie, visitors.LetIn(), new CookieOptions
        {
            HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = Visitors.Visit, IsEssential = true,
        });
        // Only an address of this workbench is gone on to.
        var isOurs = next.StartsWith($"/{token}/", StringComparison.Ordinal);
        http.Response.StatusCode = StatusCodes.Status303SeeOther;
        http.Response.Headers.Location = isOurs ? next : $"/{token}/brief";
    }

    /// <summary>One guess is looked at after the other: each costs a good part of a second, and is meant to.</summary>
    private async Task<bool> IsRight(string guess)
    {
        Interlocked.Increment(ref waiting);
        try
        {
            return await Task.Run(() =>
            {
                lock (turn) return passphrase.Is(guess);
            }).ConfigureAwait(false);
        }
        finally
        {
            Interlocked.Decrement(ref waiting);
        }
    }

    private static async Task<(string Guess, string Next)> Form(HttpContext http)
    {
        if (http.Request.ContentLength is not (>= 0 and <= LargestForm))
            throw new BadHttpRequestException("too large", StatusCodes.Status413PayloadTooLarge);
        using var reader = new StreamReader(http.Request.Body);
        var values = QueryHelpers.ParseQuery(await reader.ReadToEndAsync(http.RequestAborted).ConfigureAwait(false));
        string Of(string name) => values.TryGetValue(name, out var value) ? value.ToString() : "";
        return (Of("passphrase"), Of("next"));
    }

    private static Task Ask(HttpContext http, int status, string wrong, string next)
    {
        // Without this a browser calls the page of the form nobody's, and what nobody's page posts is refused.
        http.Response.Headers["Referrer-Policy"] = "same-origin";
        using var text = new StringWriter();
        text.Write("<!DOCTYPE html>\n");
        var markup = new MarkupWriter(text);
        markup.Open("html", ("lang", "en-GB"));
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        markup.Leaf("meta", ("name", "viewport"), ("content", "width=device-width"));
        markup.Element("title", "Lanewright");
        markup.Leaf("link", ("rel", "stylesheet"), ("href", Style));
        markup.Close();
        markup.Open("body", ("class", "gate"));
        markup.Open("main");
        markup.Element("h1", "Passphrase");
        markup.Element("p", "A plan is open here for those who were given its passphrase.", ("class", "lead"));
        if (wrong.Length > 0) markup.Element("p", wrong, ("class", "torn"), ("role", "alert"));
        markup.Open("form", ("method", "post"), ("action", Enter));
        markup.Element("label", "Passphrase", ("for", "passphrase"));
        markup.Leaf("input", ("id", "passphrase"), ("name", "passphrase"), ("type", "password"), ("autofocus", "autofocus"),
            ("autocomplete", "current-password"), ("maxlength", "500"), ("required", "required"));
        markup.Leaf("input", ("type", "hidden"), ("name", "next"), ("value", next));
        markup.Inline("button", "Open", ("type", "submit"));
        markup.Close();
        markup.Element("p", "This connection is plain HTTP: whoever can listen on the network between can read the passphrase and the "
            + "plan.", ("class", "soft small"));
        markup.Close();
        markup.Close();
        markup.Close();
        return Reply.Text(http.Response, status, Html, text.ToString());
    }
}
