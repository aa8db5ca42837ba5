using System.CommandLine;
using Lanewright.Rules;

namespace Lanewright.Cli.Commands;

/// <summary>Arguments and options that several commands have.</summary>
internal static class CommonOptions
{
    /// <summary>Print JSON instead of a table.</summary>
    public static Option<bool> Json() => new("--json") { Description = "print JSON for programs" };

    /// <summary>The plan.</summary>
    public static Argument<string> Plan() => new("PLAN") { Description = "the plan file, or a folder that holds plan.yaml" };

    /// <summary>Compiles the plan a person named; fails the command when its file cannot be read.</summary>
    public static JudgedPlan Compile(string named)
    {
        var path = DiskFiles.PlanPath(named);
        var files = new DiskFiles();
        if (files.Read(path) is null)
            throw new UsageFault($"the plan '{path}' cannot be read: {files.Problem(path)}");
        return Printing.Screen.WithProgress(step => Compilation.Of(files, path, step));
    }

    /// <summary>What was made of a plan; fails the command when nothing was.</summary>
    public static DesignedPlan Designed(JudgedPlan judged) => judged.Designed
        ?? throw new UsageFault("nothing could be made of the plan; 'lanewright check' shows what stands in the way");
}
