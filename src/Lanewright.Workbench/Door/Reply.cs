using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Lanewright.Workbench.Door;

/// <summary>Writes answers. Every one of them says that nothing of it may be kept, framed, guessed at or fetched from elsewhere.</summary>
internal static class Reply
{
    /// <summary>Nothing runs and nothing is fetched but what this server itself serves, and markup enters a page at one door of its
    /// script.</summary>
    public const string Policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types sheet";

    /// <summary>Sets the headers of every answer.</summary>
    public static void Guard(HttpResponse response)
    {
        var headers = response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Embedder-Policy"] = "require-corp";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), usb=(), serial=()";
        headers.CacheControl = "no-store";
    }

    /// <summary>A text.</summary>
    public static Task Text(HttpResponse response, int status, string type, string text)
    {
        response.StatusCode = status;
        return Bytes(response, type, Encoding.UTF8.GetBytes(text));
    }

    /// <summary>Bytes.</summary>
    public static async Task Bytes(HttpResponse response, string type, ReadOnlyMemory<byte> bytes)
    {
        response.ContentType = type;
        response.ContentLength = bytes.Length;
        if (!HttpMethods.IsHead(response.HttpContext.Request.Method)) await response.Body.WriteAsync(bytes).ConfigureAwait(false);
    }

    /// <summary>JSON.</summary>
    public static async Task Json(HttpResponse response, int status, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        await using (var writer = new Utf8JsonWriter(stream)) write(writer);
        response.StatusCode = status;
        await Bytes(response, "application/json; charset=utf-8", stream.ToArray()).ConfigureAwait(false);
    }
}
