using System.Net;

namespace Lanewright.Tests.Workbench;

/// <summary>The demo opened once for tests that leave it as it was.</summary>
public sealed class OpenedDemo : IAsyncLifetime
{
    private OpenedPlan? plan;

    /// <summary>Where its addresses begin.</summary>
    public string Root => plan!.Root;

    /// <summary>Looks at an address.</summary>
    public Task<(HttpStatusCode Status, string Text)> Get(string place) => plan!.Ready(place);

    /// <summary>Waits until its first result is there.</summary>
    public async ValueTask InitializeAsync()
    {
        plan = await OpenedPlan.OfExample("kestrel-bay");
        await plan.Version("plan.yaml");
    }

    public async ValueTask DisposeAsync()
    {
        if (plan is not null) await plan.DisposeAsync();
    }
}
