using System.Text;
using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Workbench.Desk;
using Lanewright.Workbench.Door;
using Lanewright.Workbench.Sheets;
using Microsoft.AspNetCore.Http;

namespace Lanewright.Workbench;

/// <summary>What stands at which address.</summary>
internal sealed class Router(PlanDesk desk, Doorkeeper doorkeeper)
{
    private const string Html = "text/html; charset=utf-8";
    private const string Plain = "text/plain; charset=utf-8";
    private const int MostRows = 400;

    /// <summary>How long a page may take before its reader is told that it is being made.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(900);
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(25);

    private readonly Site site = new(doorkeeper.Token);

    /// <summary>Answers a request.</summary>
    public async Task Serve(HttpContext http)
    {
        Reply.Guard(http.Response);
        try
        {
            if (doorkeeper.Refusal(http.Request) is { } refused)
            {
                await Reply.Text(http.Response, refused.Status, Plain, refused.Words).ConfigureAwait(false);
                return;
            }
            var parts = (http.Request.Path.Value ?? "").Split('/', 4);
            var (place, rest) = (parts.Length > 2 ? parts[2] : "", parts.Length > 3 ? parts[3] : "");
            if (HttpMethods.IsPost(http.Request.Method)) await Post(http, place).ConfigureAwait(false);
            else await Get(http, place, rest).ConfigureAwait(false);
        }
        catch (BadHttpRequestException fault)
        {
            await Reply.Text(http.Response, fault.StatusCode, Plain, fault.StatusCode == StatusCodes.Status413PayloadTooLarge
                ? "This text is larger than the workbench takes." : "This request cannot be read.").ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // Nobody waits for the answer any more.
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException && !http.Response.HasStarted)
        {
            await Reply.Text(http.Response, StatusCodes.Status500InternalServerError, Plain,
                "The folder of the plan cannot be written to; nothing was saved. " + fault.Message).ConfigureAwait(false);
        }
    }

    private Task Get(HttpContext http, string place, string rest) => place switch
    {
        "" => Redirect(http),
        "assets" => Asset(http, rest),
        "state" => State(http),
        "rows" => Rows(http),
        "text" => Text(http),
        "schema.json" => Schema(http),
        "files" => Document(http, rest),
        _ => Page(http, place, rest),
    };

    private Task Post(HttpContext http, string place) => place switch
    {
        "type" => Change(http, (name, version, text) => desk.Type(name, version, text)),
        "save" => Change(http, (name, version, _) => desk.Save(name, version)),
        "known" => Known(http),
        "discard" => Change(http, (name, _, _) => desk.Discard(name)),
        "keep" => Change(http, (name, version, _) => desk.KeepTyped(name, version)),
        _ => Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "Nothing takes a post here."),
    };

    private Task Redirect(HttpContext http)
    {
        http.Response.Redirect(site.To("brief"));
        return Task.CompletedTask;
    }

    private static Task Asset(HttpContext http, string name) => Assets.Find(name) is { } asset
        ? Reply.Text(http.Response, StatusCodes.Status200OK, asset.Type, asset.Text)
        : Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "No such file.");

    /// <summary>Tells when something changed; the answer waits until it did.</summary>
    private async Task State(HttpContext http)
    {
        _ = Numerals.TryWhole(http.Request.Query["seen"].ToString(), out var seen);
        var ticks = await desk.NextTick(seen, LongestWait, http.RequestAborted).ConfigureAwait(false);
        await Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("ticks", ticks);
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    private async Task Rows(HttpContext http)
    {
        var query = http.Request.Query;
        if (desk.Current?.Links is not { } book)
        {
            await Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "There are no links.").ConfigureAwait(false);
            return;
        }
        _ = Numerals.TryWhole(query["from"].ToString(), out var from);
        _ = Numerals.TryWhole(query["count"].ToString(), out var count);
        var chosen = book.Select(query["filter"].ToString(), query["sort"].ToString());
        var first = (int)Math.Clamp(from, 0, chosen.Length);
        await Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("of", book.Count);
            json.WriteNumber("total", chosen.Length);
            json.WriteNumber("from", first);
            json.WriteStartArray("rows");
            foreach (var link in chosen.AsSpan(first, (int)Math.Min(Math.Clamp(count, 0, MostRows), chosen.Length - first)))
            {
                json.WriteStartArray();
                foreach (var cell in book.Row(link)) json.WriteStringValue(cell);
                json.WriteEndArray();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    private Task Text(HttpContext http) => desk.StateOf(http.Request.Query["file"].ToString()) is { } file
        ? Reply.Json(http.Response, StatusCodes.Status200OK, json => TextJson.Write(json, file, desk.Current?.Judged.Findings ?? []))
        : Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "This is no file of the plan.");

    private static async Task Schema(HttpContext http)
    {
        using var stream = new MemoryStream();
        SchemaDocument.Write(stream);
        await Reply.Bytes(http.Response, "application/json; charset=utf-8", stream.ToArray()).ConfigureAwait(false);
    }

    /// <summary>A document as <c>build</c> writes it, to be kept.</summary>
    private async Task Document(HttpContext http, string name)
    {
        var made = desk.Current is { } now
            ? await Task.Run(() => Made(now, name), http.RequestAborted).ConfigureAwait(false)
            : null;
        if (made is not { } bytes)
        {
            await Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "There is no such document.").ConfigureAwait(false);
            return;
        }
        http.Response.Headers.ContentDisposition = $"attachment; filename=\"{Path.GetFileName(name)}\"";
        http.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'; style-src 'unsafe-inline'";
        await Reply.Bytes(http.Response, "application/octet-stream", bytes).ConfigureAwait(false);
    }

    private static byte[]? Made(Snapshot now, string name)
    {
        if (DeliverySet.Of(now.Judged).FirstOrDefault(d => d.Name == name) is not { } document) return null;
        using var stream = new MemoryStream();
        document.Write(stream);
        return stream.ToArray();
    }

    private async Task Change(HttpContext http, Func<string, long, string, EditAnswer?> change)
    {
        using var reader = new StreamReader(http.Request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true));
        string text;
        try
        {
            text = await reader.ReadToEndAsync(http.RequestAborted).ConfigureAwait(false);
        }
        catch (DecoderFallbackException)
        {
            await Reply.Text(http.Response, StatusCodes.Status400BadRequest, Plain, "This is no UTF-8 text.").ConfigureAwait(false);
            return;
        }
        if (!Numerals.TryWhole(http.Request.Query["version"].ToString(), out var version)) version = -1;
        if (change(http.Request.Query["file"].ToString(), version, text) is not { } answer)
        {
            await Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "This is no file of the plan.").ConfigureAwait(false);
            return;
        }
        var status = answer.IsDone ? StatusCodes.Status200OK : StatusCodes.Status409Conflict;
        await Reply.Json(http.Response, status, json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("done", answer.IsDone);
            json.WriteString("words", answer.Words);
            json.WriteNumber("version", answer.Version);
            if (answer.Text is { } other) json.WriteString("text", other);
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    /// <summary>Tells which of some words are names of things, and where each leads.</summary>
    private async Task Known(HttpContext http)
    {
        using var reader = new StreamReader(http.Request.Body, Encoding.UTF8);
        var words = (await reader.ReadToEndAsync(http.RequestAborted).ConfigureAwait(false)).Split('\n');
        await Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            foreach (var word in words.Distinct())
                if (desk.Current?.Places?.Of(word) is { } found) json.WriteString(word, site.To(found.Page));
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    private async Task Page(HttpContext http, string place, string rest)
    {
        var entry = Register.Find(place);
        var seen = desk.Ticks;
        if (desk.Current is { } shown && desk.Files().Any(f => f.IsTyped)) await Compare(shown, http).ConfigureAwait(false);
        var page = entry is null ? Frame.NoSuchSheet(place) : await Body(entry, rest, http).ConfigureAwait(false);
        var status = page.IsFound ? StatusCodes.Status200OK : StatusCodes.Status404NotFound;
        await Reply.Text(http.Response, status, Html, Frame.Around(page, entry, desk, site, seen, http.Request))
            .ConfigureAwait(false);
    }

    /// <summary>Gives the two texts a moment to be held against one another; a page tells later what takes longer.</summary>
    private async Task Compare(Snapshot now, HttpContext http)
    {
        if (await Task.WhenAny(now.Compared, Task.Delay(Patience, http.RequestAborted)).ConfigureAwait(false) == now.Compared) return;
        _ = now.Compared.ContinueWith(_ => desk.Tick(), TaskScheduler.Default);
    }

    private async Task<Page> Body(RegisterEntry entry, string rest, HttpContext http)
    {
        var asked = http.Request.Query;
        if (desk.Current is null) await desk.NextTick(desk.Ticks, Patience, http.RequestAborted).ConfigureAwait(false);
        if (desk.Current is not { } now) return Frame.BeingMade("The plan is being read for the first time.");
        // What the editor shows changes with every stroke and is fetched by it.
        if (entry.Key == "plan") return SheetPaper.Page(entry, rest, asked, now, desk, site);
        var address = $"{entry.Key}\n{rest}\n{http.Request.QueryString}";
        var making = now.PageOf(address, () => SheetPaper.Page(entry, rest, asked, now, desk, site));
        if (await Task.WhenAny(making, Task.Delay(Patience, http.RequestAborted)).ConfigureAwait(false) == making)
            return await making.ConfigureAwait(false);
        _ = making.ContinueWith(_ => desk.Tick(), TaskScheduler.Default);
        return Frame.BeingMade("This sheet is being worked out. It fills itself in as soon as it is ready; other sheets can be read "
            + "meanwhile.");
    }
}
