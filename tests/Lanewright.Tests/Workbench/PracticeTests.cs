using System.Net;
using System.Text.Json;

namespace Lanewright.Tests.Workbench;

/// <summary>Edits that the workbench practises are seen by nobody and hold nobody up.</summary>
public sealed class PracticeTests
{
    private const string Text = "lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 2 } }\n";

    [Fact]
    public async Task Practice_ChangesNothingAndGivesWayToWhoTypes()
    {
        await using var plan = await OpenedPlan.Practising(Text);
        var version = await plan.Version("plan.yaml");
        var before = await Ticks(plan);
        while (plan.Server.RoundsPractised == 0) await Task.Delay(50, TestContext.Current.CancellationToken);
        Assert.Equal(before, await Ticks(plan));
        Assert.Equal(version, await plan.Version("plan.yaml"));
        Assert.Equal(Text, plan.OnDisk("plan.yaml"));
        // Nothing is kept of what nobody typed.
        Assert.Empty(Directory.GetFiles(Path.Combine(plan.Folder, ".lanewright"), "plan.yaml*"));
        Assert.Contains("as saved", (await plan.Ready("brief")).Text, StringComparison.Ordinal);
        var (status, _) = await plan.Post(
            $"type?file=plan.yaml&version={version}", Text.Replace("32x400", "no-such", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.OK, status);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("findings").EnumerateArray()
            .Any(f => f.GetProperty("severity").GetString() == "error"));
    }

    private static async Task<long> Ticks(OpenedPlan plan)
    {
        using var json = JsonDocument.Parse((await plan.Get("state?seen=-1")).Text);
        return json.RootElement.GetProperty("ticks").GetInt64();
    }
}
