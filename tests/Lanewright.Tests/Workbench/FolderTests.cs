using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Lanewright.Tests.Workbench;

/// <summary>Only the folder of the plan is read and written, and of it only the files that the plan reads.</summary>
public sealed class FolderTests
{
    private const string Secret = "secret-words-outside";

    private static async Task<OpenedPlan> WithSecret(string plan)
    {
        var opened = await OpenedPlan.OfText("lanewright: 1\nname: small\n");
        await File.WriteAllTextAsync(Path.Combine(Path.GetDirectoryName(opened.Folder)!, "secret.yaml"), $"name: {Secret}\n");
        await File.WriteAllTextAsync(Path.Combine(opened.Folder, "other.yaml"), $"name: {Secret}\n");
        await File.WriteAllTextAsync(Path.Combine(opened.Folder, "plan.yaml"), plan);
        return opened;
    }

    [Theory]
    [InlineData("../secret.yaml")]
    [InlineData("..%2Fsecret.yaml")]
    [InlineData("%2e%2e/secret.yaml")]
    [InlineData("..\\secret.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("%2Fetc%2Fpasswd")]
    [InlineData("./plan.yaml%00")]
    [InlineData("other.yaml")]
    [InlineData(".lanewright/plan.yaml.previous")]
    public async Task FileThatThePlanDoesNotRead_IsNeitherShownNorWritten(string name)
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        await plan.Version("plan.yaml");
        foreach (var place in new[] { "text?file=", "plan/", "files/", "assets/" })
        {
            var (status, text) = await plan.Get(place + name);
            Assert.True(status is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, status.ToString());
            Assert.DoesNotContain(Secret, text, StringComparison.Ordinal);
            Assert.DoesNotContain("root:", text, StringComparison.Ordinal);
        }
        foreach (var place in new[] { "type", "save", "discard", "keep" })
            Assert.Equal(HttpStatusCode.NotFound, (await plan.Post($"{place}?version=1&file={name}", "name: written\n")).Status);
        Assert.Contains(Secret, await File.ReadAllTextAsync(Path.Combine(plan.Folder, "other.yaml")), StringComparison.Ordinal);
        Assert.Equal([".gitignore", "open", "open.port"],
            Directory.GetFiles(Path.Combine(plan.Folder, ".lanewright")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task PathThatClimbs_IsNotFollowed()
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        var root = new Uri(plan.Root).AbsolutePath;
        foreach (var path in new[] { $"{root}assets/../../../etc/passwd", $"{root}files/../../secret.yaml", $"{root}../brief" })
        {
            // A client of the library would tidy the path up before it sends it.
            using var client = new TcpClient();
            await client.ConnectAsync(IPAddress.Loopback, plan.Server.Port);
            await using var stream = client.GetStream();
            await stream.WriteAsync(Encoding.ASCII.GetBytes(
                $"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{plan.Server.Port}\r\nConnection: close\r\n\r\n"));
            using var reader = new StreamReader(stream);
            var answer = await reader.ReadToEndAsync();
            Assert.StartsWith("HTTP/1.1 404", answer, StringComparison.Ordinal);
            Assert.DoesNotContain(Secret, answer, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Save_WritesThroughNoLink()
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        var secret = Path.Combine(Path.GetDirectoryName(plan.Folder)!, "secret.yaml");
        File.CreateSymbolicLink(Path.Combine(plan.Folder, "plan.yaml.partial"), secret);
        await plan.Post($"type?file=plan.yaml&version={await plan.Version("plan.yaml")}", "lanewright: 1\nname: changed\n");
        Assert.Equal(HttpStatusCode.OK, (await plan.Post($"save?file=plan.yaml&version={await plan.Version("plan.yaml")}")).Status);
        Assert.Contains(Secret, await File.ReadAllTextAsync(secret), StringComparison.Ordinal);
        Assert.Contains("changed", plan.OnDisk("plan.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FolderForTypedTexts_ThatLeadsElsewhereIsNotWrittenTo()
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        var elsewhere = Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(plan.Folder)!, "elsewhere")).FullName;
        Directory.Delete(Path.Combine(plan.Folder, ".lanewright"), recursive: true);
        Directory.CreateSymbolicLink(Path.Combine(plan.Folder, ".lanewright"), elsewhere);
        var version = await plan.Version("plan.yaml");
        var (status, words) = await plan.Post($"type?file=plan.yaml&version={version}", "lanewright: 1\nname: changed\n");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains("not kept on disk", words, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(elsewhere));
    }

    [Fact]
    public async Task TextThatCannotBeKept_IsTakenAndTypedOnAndNothingIsSaidToBeKept()
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        Directory.Delete(Path.Combine(plan.Folder, ".lanewright"), recursive: true);
        await File.WriteAllTextAsync(Path.Combine(plan.Folder, ".lanewright"), "no folder", TestContext.Current.CancellationToken);
        var before = await plan.Version("plan.yaml");
        foreach (var typed in new[] { "lanewright: 1\nname: first\n", "lanewright: 1\nname: second\n" })
        {
            var (status, words) = await plan.Post($"type?file=plan.yaml&version={await plan.Version("plan.yaml")}", typed);
            Assert.Equal(HttpStatusCode.OK, status);
            Assert.Contains("not kept on disk", words, StringComparison.Ordinal);
            Assert.Contains("\"kept\":false", words, StringComparison.Ordinal);
            Assert.Equal(typed, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
        }
        var (refused, why) = await plan.Post($"type?file=plan.yaml&version={before}", "lanewright: 1\nname: other\n");
        Assert.Equal(HttpStatusCode.Conflict, refused);
        Assert.Contains("Your text is still here;", why, StringComparison.Ordinal);
        Assert.Contains("not kept on disk", why, StringComparison.Ordinal);
        var version = await plan.Version("plan.yaml");
        Assert.Equal(HttpStatusCode.InternalServerError, (await plan.Post($"save?file=plan.yaml&version={version}")).Status);
        Assert.Equal("lanewright: 1\nname: small\n", plan.OnDisk("plan.yaml"));
    }

    [Theory]
    [InlineData("../secret.yaml")]
    [InlineData("{0}/secret.yaml")]
    [InlineData("linked.yaml")]
    [InlineData("linked/secret.yaml")]
    public async Task PlanThatMentionsAFileOutside_GetsAFindingAndNotTheFile(string name)
    {
        await using var plan = await WithSecret("lanewright: 1\nname: small\n");
        var above = Path.GetDirectoryName(plan.Folder)!;
        File.CreateSymbolicLink(Path.Combine(plan.Folder, "linked.yaml"), Path.Combine(above, "secret.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(plan.Folder, "linked"), above);
        var mentioned = name.Replace("{0}", above, StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(plan.Folder, "plan.yaml"), $"lanewright: 1\nname: small\ninclude: ['{mentioned}']\n");
        // The file may be seen half written, so that its first finding need not be this one.
        await plan.TextWhen("plan.yaml", t => t.GetProperty("findings").EnumerateArray()
            .Any(f => f.GetProperty("message").GetString()!.Contains("outside the folder", StringComparison.Ordinal)));
        Assert.Equal(HttpStatusCode.NotFound, (await plan.Get("text?file=" + Uri.EscapeDataString(mentioned))).Status);
        Assert.DoesNotContain(Secret, (await plan.Get("brief")).Text, StringComparison.Ordinal);
    }
}
