using System.Text;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Markup;
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
            if (doorkeeper.Gate is { } gate && !gate.IsIn(http.Request))
            {
                await gate.Serve(http).ConfigureAwait(false);
                return;
            }
            if (!doorkeeper.HasToken(http.Request.Path))
            {
                await WithoutToken(http).ConfigureAwait(false);
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
        "progress" => Progress(http),
        "rows" => Rows(http),
        "text" => Text(http),
        "schema.json" => Schema(http),
        "names" => Names(http),
        "files" => Document(http, rest),
        _ => Page(http, place, rest),
    };

    private Task Post(HttpContext http, string place) => place switch
    {
        "break-off" => Steer(http, desk.BreakOff),
        "resume" => Steer(http, desk.Resume),
        "type" => Change(http, (name, version, text) => desk.Type(name, version, text)),
        "save" => Change(http, (name, version, _) => desk.Save(name, version)),
        "discard" => Change(http, (name, version, _) => desk.Discard(name, version)),
        "aside" => Change(http, (name, _, text) => desk.PutAside(name, text)),
        "replace" => Change(http, desk.Replace),
        "known" => Known(http),
        "keep" => Change(http, (name, version, _) => desk.KeepTyped(name, version)),
        _ => Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "Nothing takes a post here."),
    };

    /// <summary>Who gave the passphrase may come by the short address; on this machine the token is all that lets anybody in.</summary>
    private Task WithoutToken(HttpContext http) => doorkeeper.Gate is not null && http.Request.Path.Value is "/" or "/enter"
        ? Redirect(http)
        : Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain,
            "Nothing here. Open the whole address that 'lanewright open' printed.");

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

    /// <summary>Tells how far work is that somebody waits for.</summary>
    private async Task Progress(HttpContext http)
    {
        var place = http.Request.Query["work"].ToString();
        var judging = desk.Running;
        var (age, step) = place == PlanDesk.JudgingPlace ? (judging?.Age, judging?.Step) : (desk.Works.AgeOf(place), desk.Step);
        await Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("goesOn", age is not null);
            json.WriteNumber("seconds", (int)(age ?? default).TotalSeconds);
            json.WriteString("step", step);
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    private static Task Steer(HttpContext http, Action<string> steer)
    {
        steer(http.Request.Query["work"].ToString());
        return Reply.Text(http.Response, StatusCodes.Status200OK, Plain, "");
    }

    private async Task Rows(HttpContext http)
    {
        var query = http.Request.Query;
        var isSaved = SheetSides.Read(query[SheetSides.Key].ToString(), SideChoice.Either) == SheetSide.Saved;
        if ((isSaved ? desk.Current?.AsSaved : desk.Current)?.Links is not { } book)
        {
            await Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "There are no links.").ConfigureAwait(false);
            return;
        }
        _ = Numerals.TryWhole(query["from"].ToString(), out var from);
        _ = Numerals.TryWhole(query["count"].ToString(), out var count);
        var filter = query["filter"].ToString();
        var chosen = book.Select(filter, query["sort"].ToString());
        var first = (int)Math.Clamp(from, 0, chosen.Length);
        await Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("of", book.Count);
            json.WriteNumber("total", chosen.Length);
            json.WriteNumber("from", first);
            json.WriteString("trouble", MarginTest.Trouble(filter));
            json.WriteStartArray("rows");
            foreach (var link in chosen.AsSpan(first, (int)Math.Min(Math.Clamp(count, 0, MostRows), chosen.Length - first)))
            {
                json.WriteStartArray();
                foreach (var cell in book.Row(link)) json.WriteStringValue(VisibleText.Of(cell));
                json.WriteEndArray();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }).ConfigureAwait(false);
    }

    private Task Text(HttpContext http)
    {
        if (desk.StateOf(http.Request.Query["file"].ToString()) is not { } file)
            return Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "This is no file of the plan.");
        if (!Numerals.TryWhole(http.Request.Query["have"].ToString(), out var have)) have = -1;
        return Reply.Json(
            http.Response, StatusCodes.Status200OK, json => TextJson.Write(json, file, have, desk.Current?.Judged.Findings ?? []));
    }

    private static async Task Schema(HttpContext http)
    {
        using var stream = new MemoryStream();
        SchemaDocument.Write(stream);
        await Reply.Bytes(http.Response, "application/json; charset=utf-8", stream.ToArray()).ConfigureAwait(false);
    }

    /// <summary>Names that may stand at a place of the plan.</summary>
    private Task Names(HttpContext http)
    {
        var place = http.Request.Query["at"].OfType<string>().ToList();
        var begun = http.Request.Query["begun"].ToString();
        return Reply.Json(http.Response, StatusCodes.Status200OK, json =>
            NamesThatFit.Write(json, desk.Current?.LastPlan is { } plan ? NamesThatFit.At(plan, place, begun) : []));
    }

    /// <summary>A document as <c>build</c> writes it, to be kept.</summary>
    private async Task Document(HttpContext http, string name)
    {
        var isSaved = SheetSides.Read(http.Request.Query[SheetSides.Key].ToString()) == SheetSide.Saved;
        byte[]? made;
        try
        {
            made = (isSaved ? desk.Current?.AsSaved : desk.Current) is { } now
                ? await Task.Run(() => Made(now, name, http.RequestAborted), http.RequestAborted).ConfigureAwait(false)
                : null;
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            await Reply.Text(http.Response, StatusCodes.Status503ServiceUnavailable, Plain,
                "The text has changed meanwhile, or this was broken off; ask for the document again.").ConfigureAwait(false);
            return;
        }
        if (made is not { } bytes)
        {
            await Reply.Text(http.Response, StatusCodes.Status404NotFound, Plain, "There is no such document.").ConfigureAwait(false);
            return;
        }
        http.Response.Headers.ContentDisposition = $"attachment; filename=\"{Path.GetFileName(name)}\"";
        http.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'; style-src 'unsafe-inline'";
        await Reply.Bytes(http.Response, "application/octet-stream", bytes).ConfigureAwait(false);
    }

    private byte[]? Made(Snapshot now, string name, CancellationToken gone)
    {
        if (DeliverySet.Of(now.Judged).FirstOrDefault(d => d.Name == name) is not { } document) return null;
        using var work = desk.Works.Begin("files/" + name);
        using var stream = new WatchedStream(gone);
        document.Write(stream);
        return stream.ToArray();
    }

    private async Task Change(HttpContext http, Func<string, long, string, EditAnswer?> change)
    {
        using var reader = new StreamReader(http.Request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true),
            detectEncodingFromByteOrderMarks: false);
        string text;
        try
        {
            text = (await reader.ReadToEndAsync(http.RequestAborted).ConfigureAwait(false)).TrimStart('\uFEFF');
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
            json.WriteBoolean("kept", answer.IsKept);
            if (answer.OwnVersion is { } own) json.WriteNumber("ownVersion", own);
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
        if (entry is not null && http.Request.Headers.ContainsKey("X-Ahead"))
        {
            await Ahead(entry, rest, http).ConfigureAwait(false);
            return;
        }
        var seen = desk.Ticks;
        // Texts that take longer to be held against one another are told of later.
        if (desk.Current is { } shown && desk.Files().Any(f => f.IsTyped)) await IsSoonDone(shown.Compared, http).ConfigureAwait(false);
        var page = entry is null ? Frame.NoSuchSheet(place) : await Body(entry, rest, http).ConfigureAwait(false);
        var status = page.IsFound ? StatusCodes.Status200OK : StatusCodes.Status404NotFound;
        await Reply.Text(http.Response, status, Html, Frame.Around(page, entry, desk, site, seen, http.Request))
            .ConfigureAwait(false);
    }

    /// <summary>Gives work a moment; pages are told later when what takes longer is done.</summary>
    private async Task<bool> IsSoonDone(Task work, HttpContext http)
    {
        if (await Task.WhenAny(work, Task.Delay(Patience, http.RequestAborted)).ConfigureAwait(false) == work) return true;
        _ = work.ContinueWith(_ => desk.Tick(), TaskScheduler.Default);
        return false;
    }

    private async Task<Page> Body(RegisterEntry entry, string rest, HttpContext http)
    {
        var asked = http.Request.Query;
        // The frame of the sheets does not wait for the first result; the sheet fills itself in.
        if (desk.Current is not { } now)
            return desk.Works.IsBrokenOff(PlanDesk.JudgingPlace)
                ? Frame.BrokenOff(PlanDesk.JudgingPlace)
                : Frame.BeingMade("The plan is being read and judged for the first time.", PlanDesk.JudgingPlace);
        // What the editor shows changes with every stroke and is fetched by it.
        if (entry.Key == "plan") return SheetPaper.Page(entry, rest, asked, now, desk, site);
        var place = PlaceOf(entry, rest, http);
        if (desk.Works.IsBrokenOff(place)) return Frame.BrokenOff(place);
        var making = Making(now, entry, rest, place, asked);
        if (!await IsSoonDone(making, http).ConfigureAwait(false))
            return Frame.BeingMade("This sheet is being worked out. It fills itself in as soon as it is ready; other sheets can be read "
                + "meanwhile.", place);
        try
        {
            return await making.ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            // The text it was made from is no longer the newest; the page of the newest takes its place.
            return Frame.BeingMade("The text has changed; the sheet follows.", place);
        }
    }

    /// <summary>The place that the making of a sheet is known by.</summary>
    private static string PlaceOf(RegisterEntry entry, string rest, HttpContext http) =>
        $"{entry.Key}\n{rest}\n{http.Request.QueryString}";

    private Task<Page> Making(Snapshot now, RegisterEntry entry, string rest, string place, IQueryCollection asked) =>
        now.PageOf(place, () =>
        {
            using var work = desk.Works.Begin(place);
            return SheetPaper.Page(entry, rest, asked, now, desk, site);
        });

    /// <summary>Has a sheet made that another one leads to, and tells whether it is there.</summary>
    private Task Ahead(RegisterEntry entry, string rest, HttpContext http)
    {
        var place = PlaceOf(entry, rest, http);
        var isBrokenOff = desk.Works.IsBrokenOff(place);
        var isMade = !isBrokenOff && desk.Current is { } now && Making(now, entry, rest, place, http.Request.Query).IsCompleted;
        return Reply.Json(http.Response, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("isMade", isMade);
            json.WriteBoolean("isBrokenOff", isBrokenOff);
            json.WriteString("work", place);
            json.WriteEndObject();
        });
    }
}
