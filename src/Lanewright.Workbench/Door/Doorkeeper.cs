using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Lanewright.Workbench.Door;

/// <summary>Lets in only who was given the address: a page of another site, a name that was made to point here and a program that guesses
/// stay outside.</summary>
internal sealed class Doorkeeper
{
    private const int TokenBytes = 24;

    private readonly byte[] token;
    private readonly HashSet<string> hosts;

    /// <summary>Takes the port of the server and draws a token.</summary>
    public Doorkeeper(int port)
    {
        Token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
        token = Encoding.ASCII.GetBytes(Token);
        hosts = new(StringComparer.OrdinalIgnoreCase) { $"127.0.0.1:{port}", $"localhost:{port}" };
    }

    /// <summary>The token: the first part of every address.</summary>
    public string Token { get; }

    /// <summary>Why a request is turned away, with the status that says so; null when it may come in.</summary>
    public (int Status, string Words)? Refusal(HttpRequest request)
    {
        // A name of somebody else's that was made to point at this machine arrives with that name.
        if (!hosts.Contains(request.Host.Value ?? ""))
            return (StatusCodes.Status403Forbidden, "This address is not the one the workbench was opened under.");
        var isChange = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        if (isChange && !HttpMethods.IsPost(request.Method))
            return (StatusCodes.Status405MethodNotAllowed, "The workbench knows reading and posting only.");
        if (!IsOfOurs(request, isChange))
            return (StatusCodes.Status403Forbidden, "This request came from a page that is not the workbench's own.");
        if (!HasToken(request.Path))
            return (StatusCodes.Status404NotFound, "Nothing here. Open the whole address that 'lanewright open' printed.");
        return null;
    }

    /// <summary>Browsers say which page a request comes from. A change must come from ours; a look may come from an address a person typed
    /// or followed.</summary>
    private bool IsOfOurs(HttpRequest request, bool isChange)
    {
        var origin = request.Headers.Origin.ToString();
        if (origin.Length > 0 ? !hosts.Any(h => origin.Equals("http://" + h, StringComparison.OrdinalIgnoreCase)) : isChange) return false;
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site is "" or "same-origin" or "none") return true;
        return !isChange && request.Headers["Sec-Fetch-Mode"] == "navigate" && request.Headers["Sec-Fetch-Dest"] == "document";
    }

    private bool HasToken(PathString path)
    {
        var value = path.Value ?? "";
        var end = value.IndexOf('/', Math.Min(1, value.Length));
        if (end < 2) return false;
        return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(value[1..end]), token);
    }
}
