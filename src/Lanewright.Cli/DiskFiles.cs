using System.Text;
using Lanewright.Text;

namespace Lanewright.Cli;

/// <summary>The door to files, opened on disk.</summary>
internal sealed class DiskFiles : PlanFiles
{
    private const long LargestFile = 64 * 1024 * 1024;

    /// <inheritdoc/>
    public override SourceText? Read(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists || file.Length > LargestFile) return null;
            using var reader = new StreamReader(path, new UTF8Encoding(false, throwOnInvalidBytes: true));
            return new SourceText(path.Replace('\\', '/'), reader.ReadToEnd());
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or DecoderFallbackException
            or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>The plan file a person means: the file itself, or the one plan in a folder.</summary>
    public static string PlanPath(string named)
    {
        if (!Directory.Exists(named)) return named;
        var usual = Path.Combine(named, "plan.yaml");
        if (File.Exists(usual)) return usual.Replace('\\', '/');
        var plans = Directory.GetFiles(named, "*.yaml");
        return plans.Length == 1 ? plans[0].Replace('\\', '/') : usual.Replace('\\', '/');
    }
}
