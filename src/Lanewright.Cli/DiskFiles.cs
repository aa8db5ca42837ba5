using System.Text;
using Lanewright.Text;

namespace Lanewright.Cli;

/// <summary>The door to files, opened on disk.</summary>
internal sealed class DiskFiles : PlanFiles
{
    private const int LargestFile = 64 * 1024 * 1024;

    /// <inheritdoc/>
    public override SourceText? Read(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists || file.Length > LargestFile) return null;
            using var reader = new StreamReader(path, new UTF8Encoding(false, throwOnInvalidBytes: true));
            return ReadBounded(reader) is { } text ? new SourceText(path.Replace('\\', '/'), text) : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or DecoderFallbackException
            or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>All of a text, or null when it is longer than any plan: a device or a pipe has no length to ask for, and may never
    /// end.</summary>
    private static string? ReadBounded(StreamReader reader)
    {
        var text = new StringBuilder();
        var block = new char[1 << 16];
        for (int read; (read = reader.ReadBlock(block)) > 0;)
        {
            text.Append(block, 0, read);
            if (text.Length > LargestFile) return null;
        }
        return text.ToString();
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
