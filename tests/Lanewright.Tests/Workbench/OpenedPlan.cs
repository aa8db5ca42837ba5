using System.Net;
using System.Text;
using System.Text.Json;
using Lanewright.Workbench;

namespace Lanewright.Tests.Workbench;

/// <summary>A plan in a folder of its own, opened in the workbench.</summary>
internal sealed class OpenedPlan : IAsyncDisposable
{
    private readonly HttpClient http = new(new HttpClientHandler { AllowAutoRedirect = false });

    private OpenedPlan(string folder, WorkbenchServer server)
    {
        Folder = folder;
        Server = server;
    }

    /// <summary>The plan's folder.</summary>
    public string Folder { get; }

    /// <summary>The server.</summary>
    public WorkbenchServer Server { get; private set; }

    /// <summary>Where its addresses begin.</summary>
    public string Root => Server.Address.ToString()[..^"brief".Length];

    /// <summary>Where a page of its own comes from.</summary>
    public string Origin => $"http://127.0.0.1:{Server.Port}";

    /// <summary>Opens a text as a plan.</summary>
    public static Task<OpenedPlan> OfText(string text) => OfFiles(("plan.yaml", text));

    /// <summary>Opens a text as a plan, served to other machines as well.</summary>
    public static Task<OpenedPlan> OfText(string text, Elsewhere elsewhere) => Of([("plan.yaml", text)], elsewhere);

    /// <summary>Opens a text as a plan, with a server that practises edits.</summary>
    public static Task<OpenedPlan> Practising(string text) => Of([("plan.yaml", text)], null, practises: true);

    /// <summary>Opens files as a plan.</summary>
    public static Task<OpenedPlan> OfFiles(params (string Name, string Text)[] files) => Of(files, null);

    private static async Task<OpenedPlan> Of((string Name, string Text)[] files, Elsewhere? elsewhere, bool practises = false)
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        var plan = Path.Combine(folder, "plan");
        Directory.CreateDirectory(plan);
        foreach (var (name, text) in files) await File.WriteAllTextAsync(Path.Combine(plan, name), text);
        return new OpenedPlan(plan, await WorkbenchServer.StartAsync(Path.Combine(plan, "plan.yaml"), 0, elsewhere, practises));
    }

    /// <summary>Opens a copy of an example.</summary>
    public static Task<OpenedPlan> OfExample(string name) => OfFiles([.. Directory.GetFiles(Repository.Path("examples", name))
        .Select(f => (Path.GetFileName(f), File.ReadAllText(f)))]);

    /// <summary>Ends the server and opens the plan anew.</summary>
    public async Task Reopen(int port = 0)
    {
        await Server.DisposeAsync();
        Server = await WorkbenchServer.StartAsync(Path.Combine(Folder, "plan.yaml"), port);
    }

    /// <summary>Looks at an address.</summary>
    public async Task<(HttpStatusCode Status, string Text)> Get(string place, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, Root + place);
        return await Send(request, headers);
    }

    /// <summary>Looks at an address until its sheet is made: a machine with much else to do takes longer than a page waits.</summary>
    public async Task<(HttpStatusCode Status, string Text)> Ready(string place)
    {
        (HttpStatusCode Status, string Text) found = default;
        await Patience.Until(place, async () =>
        {
            found = await Get(place);
            return !found.Text.Contains("data-work=", StringComparison.Ordinal);
        });
        return found;
    }

    /// <summary>Posts as a page of the workbench does.</summary>
    public Task<(HttpStatusCode Status, string Text)> Post(string place, string text = "") => Post(place, text, ("Origin", Origin));

    /// <summary>Posts with other headers.</summary>
    public async Task<(HttpStatusCode Status, string Text)> Post(string place, string text, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Root + place) { Content = new StringContent(text, Encoding.UTF8) };
        // A text that is refused is refused before it is sent.
        request.Headers.ExpectContinue = true;
        return await Send(request, headers);
    }

    /// <summary>Sends a request.</summary>
    public async Task<(HttpStatusCode Status, string Text)> Send(HttpRequestMessage request, params (string Name, string Value)[] headers)
    {
        foreach (var (name, value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        using var answer = await http.SendAsync(request);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    /// <summary>The text of a file as the workbench has it, once a condition holds.</summary>
    public async Task<JsonElement> TextWhen(string file, Func<JsonElement, bool> holds)
    {
        JsonElement found = default;
        await Patience.Until($"{file} as expected", async () =>
        {
            var (status, text) = await Get("text?file=" + file);
            if (status != HttpStatusCode.OK) return false;
            using var json = JsonDocument.Parse(text);
            found = json.RootElement.Clone();
            return holds(found);
        });
        return found;
    }

    /// <summary>The version of a file.</summary>
    public async Task<long> Version(string file) => (await TextWhen(file, _ => true)).GetProperty("version").GetInt64();

    /// <summary>The text of a file on disk.</summary>
    public string OnDisk(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public async ValueTask DisposeAsync()
    {
        await Server.DisposeAsync();
        http.Dispose();
        Directory.Delete(Path.GetDirectoryName(Folder)!, recursive: true);
    }
}
