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
    public void WhatCannotBeOpened_IsSaidInWords(string command, string words)
    {
        var run = Program.Run(command);
        Assert.Equal(2, run.Code);
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Output);
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
