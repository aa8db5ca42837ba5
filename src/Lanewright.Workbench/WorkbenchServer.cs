using System.Net;
using Lanewright.Workbench.Desk;
using Lanewright.Workbench.Door;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Lanewright.Workbench;

/// <summary>The workbench's server: one plan, this machine only.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    /// <summary>Most bytes of a request's body: a text of the plan.</summary>
    public const int LargestBody = 4 * 1024 * 1024;

    private const int MostConnections = 200;
    private const int LargestHeaders = 16 * 1024;
    private const int LargestLine = 8 * 1024;

    private readonly WebApplication app;
    private readonly PlanDesk desk;

    private WorkbenchServer(WebApplication app, PlanDesk desk, int port, string token)
    {
        this.app = app;
        this.desk = desk;
        Port = port;
        Address = new Uri($"http://127.0.0.1:{port}/{token}/brief");
    }

    /// <summary>The address to open. Who has it may read and change the plan.</summary>
    public Uri Address { get; }

    /// <summary>The port.</summary>
    public int Port { get; }

    /// <summary>Opens a plan and begins to serve it.</summary>
    /// <param name="path">The plan's first file.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    public static async Task<WorkbenchServer> StartAsync(string path, int port)
    {
        var desk = new PlanDesk(path);
        // Nothing of the surroundings steers this server: no settings file, no variable, no argument.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options => Bound(options, port));
        var app = builder.Build();
        Router? router = null;
        app.Run(http => router is { } ready ? ready.Serve(http) : Starting(http));
        try
        {
            await app.StartAsync().ConfigureAwait(false);
        }
        catch (IOException)
        {
            await desk.DisposeAsync().ConfigureAwait(false);
            await app.DisposeAsync().ConfigureAwait(false);
            throw new WorkbenchFault($"port {port} is taken; name another with --port, or leave it out");
        }
        var bound = new Uri(app.Urls.First()).Port;
        var doorkeeper = new Doorkeeper(bound);
        router = new Router(desk, doorkeeper);
        return new WorkbenchServer(app, desk, bound, doorkeeper.Token);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await desk.DisposeAsync().ConfigureAwait(false);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        await app.StopAsync(patience.Token).ConfigureAwait(false);
        await app.DisposeAsync().ConfigureAwait(false);
    }

    private static void Bound(KestrelServerOptions options, int port)
    {
        options.AddServerHeader = false;
        options.Listen(IPAddress.Loopback, port);
        options.Limits.MaxRequestBodySize = LargestBody;
        options.Limits.MaxRequestHeadersTotalSize = LargestHeaders;
        options.Limits.MaxRequestLineSize = LargestLine;
        options.Limits.MaxConcurrentConnections = MostConnections;
        options.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
    }

    private static Task Starting(HttpContext http)
    {
        http.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
        return Task.CompletedTask;
    }
}
