using System.Diagnostics;
using System.Net;

namespace Lanewright.Tests.Cli;

/// <summary>The command that opens the workbench.</summary>
public sealed class OpenCommandTests
{
    [Theory]
    [InlineData("open no-such-plan.yaml --no-browser", "it does not exist")]
    [InlineData("open examples/kestrel-bay --no-browser --port 70000", "--port is a number")]
    [InlineData("open examples --no-browser", "it does not exist")]
    [InlineData("open examples/kestrel-bay --no-browser --listen somewhere", "no address by number")]
    [InlineData("open examples/kestrel-bay --no-browser --listen 127.0.0.2", "--passphrase-file")]
    [InlineData("open examples/kestrel-bay --no-browser --listen 127.0.0.2 --passphrase-file no-such-file", "does not exist")]
    [InlineData("open examples/kestrel-bay --no-browser --passphrase-file README.md", "goes with --listen")]
    public void WhatCannotBeOpened_IsSaidInWords(string command, string words)
    {
        var run = Program.Run(command);
        Assert.Equal(2, run.Code);
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Output);
    }

    [Fact]
    public void PassphraseFile_ThatOthersCanReadOrIsTooShortIsRefused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "files have other permissions there");
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, "four words far apart\n");
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.OtherRead);
            var open = Program.Run($"open examples/kestrel-bay --no-browser --listen 127.0.0.2 --passphrase-file {file}");
            Assert.Contains("chmod 600", open.Error, StringComparison.Ordinal);
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            File.WriteAllText(file, "short\n");
            var weak = Program.Run($"open examples/kestrel-bay --no-browser --listen 127.0.0.2 --passphrase-file {file}");
            Assert.Contains("too easy to guess", weak.Error, StringComparison.Ordinal);
            Assert.Equal((2, 2), (open.Code, weak.Code));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task ServerThatIsKilled_LosesNothingThatWasTyped()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            await File.WriteAllTextAsync(
                Path.Combine(folder, "plan.yaml"), "lanewright: 1\nname: small\n", TestContext.Current.CancellationToken);
            await TypeAndKill(folder);
            await using var again = await Lanewright.Workbench.WorkbenchServer.StartAsync(Path.Combine(folder, "plan.yaml"), 0);
            using var http = new HttpClient();
            var root = again.Address.ToString()[..^"brief".Length];
            for (var i = 0; i < 100; i++)
            {
                using var answer = await http.GetAsync(root + "text?file=plan.yaml", TestContext.Current.CancellationToken);
                var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
                if (text.Contains("title: typed", StringComparison.Ordinal)) return;
                await Task.Delay(100, TestContext.Current.CancellationToken);
            }
            Assert.Fail("what was typed is gone");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Types a line and ends the server without a warning as soon as it has answered.</summary>
    private static async Task TypeAndKill(string folder)
    {
        var program = System.Reflection.Assembly.Load("lanewright").Location;
        var start = new ProcessStartInfo("dotnet", $"\"{program}\" open \"{folder}\" --no-browser") { RedirectStandardOutput = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        try
        {
            var address = new Uri(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) ?? "");
            using var http = new HttpClient();
            var root = address.ToString()[..^"brief".Length];
            for (var status = HttpStatusCode.NotFound; status != HttpStatusCode.OK;)
            {
                using var request = new HttpRequestMessage(HttpMethod.Post, root + "type?file=plan.yaml&version=1")
                {
                    Content = new StringContent("lanewright: 1\nname: small\ntitle: typed\n"),
                };
                request.Headers.Add("Origin", $"http://{address.Authority}");
                using var answer = await http.SendAsync(request, TestContext.Current.CancellationToken);
                // Until the plan is read for the first time it has no files.
                status = answer.StatusCode;
                if (status != HttpStatusCode.OK) await Task.Delay(50, TestContext.Current.CancellationToken);
            }
        }
        finally
        {
            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }

    [Fact]
    public async Task FolderThatIsOpenAlready_IsRefusedWithThePortOfTheOther()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var stop = TestContext.Current.CancellationToken;
            foreach (var name in new[] { "plan.yaml", "other.yaml" })
                await File.WriteAllTextAsync(Path.Combine(folder, name), "lanewright: 1\nname: small\n", stop);
            await using (var server = await Lanewright.Workbench.WorkbenchServer.StartAsync(Path.Combine(folder, "plan.yaml"), 0))
            {
                foreach (var plan in new[] { folder, Path.Combine(folder, "other.yaml") })
                {
                    var run = Program.Run($"open {plan} --no-browser");
                    Assert.Equal((2, ""), (run.Code, run.Output));
                    Assert.Contains($"open in another workbench, on port {server.Port};", run.Error, StringComparison.Ordinal);
                }
            }
            // It ends with the program that had it; and a folder that may not be written to is opened all the same.
            await using (await Lanewright.Workbench.WorkbenchServer.StartAsync(Path.Combine(folder, "plan.yaml"), 0))
                Assert.True(File.Exists(Path.Combine(folder, ".lanewright", "open.port")));
            Directory.Delete(Path.Combine(folder, ".lanewright"), recursive: true);
            await File.WriteAllTextAsync(Path.Combine(folder, ".lanewright"), "no folder", stop);
            await using (await Lanewright.Workbench.WorkbenchServer.StartAsync(Path.Combine(folder, "plan.yaml"), 0))
                Assert.True(File.Exists(Path.Combine(folder, ".lanewright")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task Address_IsPrintedAndAnswers()
    {
        var program = System.Reflection.Assembly.Load("lanewright").Location;
        var start = new ProcessStartInfo("dotnet", $"\"{program}\" open tests/plans/starter --no-browser")
        {
            WorkingDirectory = Repository.Root,
            RedirectStandardOutput = true,
        };
        // Variables that steer servers of this kind must not steer this one.
        start.Environment["ASPNETCORE_URLS"] = "http://0.0.0.0:5999";
        start.Environment["DOTNET_URLS"] = "http://0.0.0.0:5999";
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        try
        {
            var address = new Uri(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) ?? "");
            Assert.Equal("127.0.0.1", address.Host);
            Assert.NotEqual(5999, address.Port);
            using var http = new HttpClient();
            using var answer = await http.GetAsync(address, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
        finally
        {
            process.Kill();
        }
    }
}
