using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Lanewright.Workbench.Desk;
using Lanewright.Workbench.Door;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Lanewright.Workbench;

/// <summary>The workbench's server: one plan, this machine only unless it is told otherwise.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    /// <summary>Most bytes of a request's body: a text of the plan.</summary>
    public const int LargestBody = 4 * 1024 * 1024;

    private const int MostConnections = 200;
    private const int LargestHeaders = 16 * 1024;
    private const int LargestLine = 8 * 1024;

    private readonly WebApplication app;
    private readonly PlanDesk desk;
    private readonly FolderClaim claim;

    /// <summary>Edits that nobody made which were judged since the start, to be quick at the first that somebody makes.</summary>
    public int RoundsPractised => desk.RoundsPractised;

    private WorkbenchServer(WebApplication app, PlanDesk desk, FolderClaim claim, Uri address)
    {
        this.claim = claim;
        this.app = app;
        this.desk = desk;
        Port = address.Port;
        Address = address;
    }

    /// <summary>The address to open. Who has it may read and change the plan; on another address than loopback, who has the passphrase
    /// as well.</summary>
    public Uri Address { get; }

    /// <summary>The port.</summary>
    public int Port { get; }

    /// <summary>Opens a plan and begins to serve it.</summary>
    /// <param name="path">The plan's first file.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <param name="elsewhere">Another address to serve on, with its passphrase; null for this machine alone.</param>
    /// <param name="practises">Whether it practises edits while nobody wants anything, so that the first stroke is as quick as the
    /// tenth.</param>
    /// <exception cref="WorkbenchFault">The plan cannot be read or is open already, or the address or the port cannot be
    /// had.</exception>
    public static async Task<WorkbenchServer> StartAsync(string path, int port, Elsewhere? elsewhere = null, bool practises = false)
    {
        var desk = new PlanDesk(path, practises);
        var claim = await Claim(desk).ConfigureAwait(false);
        // Nothing of the surroundings steers this server: no settings file, no variable, no argument.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options => Bound(options, elsewhere?.Address ?? IPAddress.Loopback, port));
        var app = builder.Build();
        Router? router = null;
        app.Run(http => router is { } ready ? ready.Serve(http) : Starting(http));
        try
        {
            await app.StartAsync().ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is IOException or SocketException)
        {
            await desk.DisposeAsync().ConfigureAwait(false);
            await app.DisposeAsync().ConfigureAwait(false);
            claim.Dispose();
            throw new WorkbenchFault(fault is SocketException { SocketErrorCode: not SocketError.AddressAlreadyInUse } refused
                ? $"nothing can be served on {elsewhere?.Address ?? IPAddress.Loopback}, port {port}: {refused.Message}"
                : $"port {port} is taken; name another with --port, or leave it out");
        }
        var bound = new Uri(app.Urls.First()).Port;
        claim.Tell(bound);
        var doorkeeper = new Doorkeeper(bound, elsewhere?.Passphrase);
        router = new Router(desk, doorkeeper);
        return new WorkbenchServer(app, desk, claim, elsewhere is null
            ? new Uri($"http://127.0.0.1:{bound}/{doorkeeper.Token}/brief")
            : new UriBuilder("http", Shown(elsewhere.Address).ToString(), bound).Uri);
    }

    private static async Task<FolderClaim> Claim(PlanDesk desk)
    {
        try
        {
            return desk.Claim();
        }
        catch (WorkbenchFault)
        {
            await desk.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>An address of this machine to open, where it is served on all it has.</summary>
    private static IPAddress Shown(IPAddress address)
    {
        if (!address.Equals(IPAddress.Any) && !address.Equals(IPAddress.IPv6Any)) return address;
        return NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .FirstOrDefault(a => a.AddressFamily == AddressFamily.InterNetwork) ?? IPAddress.Loopback;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await desk.DisposeAsync().ConfigureAwait(false);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        await app.StopAsync(patience.Token).ConfigureAwait(false);
        await app.DisposeAsync().ConfigureAwait(false);
        // Until here a request that is under way may keep a text.
        claim.Dispose();
    }

    private static void Bound(KestrelServerOptions options, IPAddress address, int port)
    {
        options.AddServerHeader = false;
        options.Listen(address, port);
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
