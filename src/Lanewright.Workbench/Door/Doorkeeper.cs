using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Lanewright.Workbench.Door;

/// <summary>Lets in only who was given the address: a page of another site, a name that was made to point here and a program that guesses
/// stay outside.</summary>
internal sealed class Doorkeeper
{
    private const int TokenBytes = 24;
    private const int PlainPort = 80;

    private readonly byte[] token;
    private readonly int port;
    private readonly bool isElsewhere;

    /// <summary>Takes the port of the server and draws a token.</summary>
    /// <param name="port">The port.</param>
    /// <param name="passphrase">What lets people in from other machines; null where this machine alone is served.</param>
    public Doorkeeper(int port, Passphrase? passphrase)
    {
        Token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
        token = Encoding.ASCII.GetBytes(Token);
        this.port = port;
        isElsewhere = passphrase is not null;
        Gate = passphrase is null ? null : new Gate(passphrase, port, Token, TimeProvider.System);
    }

    /// <summary>The gate before other machines; null where this machine alone is served.</summary>
    public Gate? Gate { get; }

    /// <summary>The token: the first part of every address.</summary>
    public string Token { get; }

    /// <summary>Why a request is turned away, with the status that says so; null when it may come in.</summary>
    public (int Status, string Words)? Refusal(HttpRequest request)
    {
        // A name of somebody else's that was made to point at this machine arrives with that name.
        if (!IsOurName(request))
            return (StatusCodes.Status403Forbidden, "This address is not the one the workbench was opened under.");
        var isChange = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        if (isChange && !HttpMethods.IsPost(request.Method))
            return (StatusCodes.Status405MethodNotAllowed, "The workbench knows reading and posting only.");
        if (!IsOfOurs(request, isChange))
            return (StatusCodes.Status403Forbidden, "This request came from a page that is not the workbench's own.");
        return null;
    }

    /// <summary>Whether an address begins with the token.</summary>
    public bool HasToken(PathString path)
    {
        var value = path.Value ?? "";
        var end = value.IndexOf('/', Math.Min(1, value.Length));
        if (end < 2) return false;
        return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(value[1..end]), token);
    }

    /// <summary>Names can be made to point anywhere; a number is what it is. On another address only the number counts that the
    /// connection came in on.</summary>
    private bool IsOurName(HttpRequest request)
    {
        var host = request.Host;
        if ((host.Port ?? PlainPort) != port) return false;
        var name = host.Host.Trim('[', ']');
        if (!isElsewhere) return name == "127.0.0.1" || name.Equals("localhost", StringComparison.OrdinalIgnoreCase);
        return request.HttpContext.Connection.LocalIpAddress is { } local && IPAddress.TryParse(name, out var said)
            && Plain(said).Equals(Plain(local));
    }

    private static IPAddress Plain(IPAddress address) => address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;

    /// <summary>Browsers say which page a request comes from. A change must come from ours; a look may come from an address a person typed
    /// or followed.</summary>
    private bool IsOfOurs(HttpRequest request, bool isChange)
    {
        var origin = request.Headers.Origin.ToString();
        if (origin.Length > 0 ? !IsOurOrigin(origin, request) : isChange) return false;
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site is "" or "same-origin" or "none") return true;
        return !isChange && request.Headers["Sec-Fetch-Mode"] == "navigate" && request.Headers["Sec-Fetch-Dest"] == "document";
    }

    /// <summary>The two names of loopback are one workbench; elsewhere a page comes from the very address it asks.</summary>
    private bool IsOurOrigin(string origin, HttpRequest request)
    {
        string[] ours = isElsewhere ? [request.Host.Value ?? ""] : ["127.0.0.1:" + Port, "localhost:" + Port];
        return ours.Any(h => origin.Equals("http://" + h, StringComparison.OrdinalIgnoreCase));
    }

    private string Port => port.ToString(CultureInfo.InvariantCulture);
}
