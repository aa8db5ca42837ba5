using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Notation;
using Lanewright.Standards;

namespace Lanewright.Cli.Commands;

/// <summary><c>new</c>: a plan to start from.</summary>
internal static class NewCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var path = new Argument<string>("PATH") { Description = "the plan file to write; an existing file is never overwritten" };
        var from = new Option<string?>("--from") { Description = "a graph of places in GraphML, to begin with its sites and spans" };
        var command = new Command("new", "write a commented plan to start from") { path, from };
        command.SetAction(parsed =>
        {
            var target = parsed.GetRequiredValue(path);
            if (string.IsNullOrWhiteSpace(target)) throw new UsageFault("the plan file has no name; write 'lanewright new PATH'");
            if (File.Exists(target) || Directory.Exists(target))
                throw new UsageFault($"'{target}' exists already and is left as it is; name another file");
            var folder = Path.GetDirectoryName(Path.GetFullPath(target)) ?? ".";
            var plan = parsed.GetValue(from) is { } graph ? Of(graph) : PlanStarter.Write;
            DocumentFolder.Write(folder, [new Deliverable(Path.GetFileName(target), plan)], _ => { });
            Screen.Line($"wrote {target}; 'lanewright check {target}' judges it");
            return ExitCodes.NoErrors;
        });
        return command;
    }

    private static Action<Stream> Of(string path)
    {
        var files = new DiskFiles();
        if (files.Read(path) is not { } source) throw new UsageFault($"the graph '{path}' cannot be read: {files.Problem(path)}");
        var graph = GraphText.Read(source, out var problem) ?? throw new UsageFault($"the graph '{path}' cannot be read: {problem}");
        return stream => PlanFromGraph.Write(graph, StandardsLibrary.Shipped, stream);
    }
}
