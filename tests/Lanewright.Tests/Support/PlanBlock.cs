using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Tests.Support;

/// <summary>A plan written in a test or on a page: one file, or several, each begun by a line <c># file: NAME</c>.</summary>
internal static class PlanBlock
{
    private const string Marker = "# file: ";
    private const string Main = "plan.yaml";

    /// <summary>The files of a block; what stands before the first marker is the plan itself.</summary>
    public static TextFiles Files(string block)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        var name = Main;
        var lines = new List<string>();
        foreach (var line in block.Split('\n'))
        {
            if (line.StartsWith(Marker, StringComparison.Ordinal))
            {
                Keep();
                name = line[Marker.Length..].Trim();
                lines = [];
                continue;
            }
            lines.Add(line);
        }
        Keep();
        return new TextFiles(files);

        void Keep()
        {
            if (lines.Count > 0 && !(name == Main && files.ContainsKey(Main))) files[name] = string.Join('\n', lines);
        }
    }

    /// <summary>Compiles a block.</summary>
    public static JudgedPlan Compile(string block) => Compilation.Of(Files(block), Main);
}
