using System.Text;
using Lanewright.Text;

namespace Lanewright.Cli;

/// <summary>The door to files, opened on disk.</summary>
internal sealed class DiskFiles : PlanFiles
{
    private const int LargestFile = 64 * 1024 * 1024;
    private const string TooLarge = "it is larger than 64 MiB";

    /// <inheritdoc/>
    public override SourceText? Read(string path) => TryRead(path, out _);

    /// <inheritdoc/>
    public override string Problem(string path)
    {
        TryRead(path, out var problem);
        return problem;
    }

    private static SourceText? TryRead(string path, out string problem)
    {
        problem = "";
        try
        {
            var file = new FileInfo(path);
            problem = !file.Exists ? Directory.Exists(path) ? "it is a folder" : "it does not exist"
                : file.Length > LargestFile ? TooLarge
                : "";
            if (problem.Length > 0) return null;
            using var reader = new StreamReader(path, new UTF8Encoding(false, throwOnInvalidBytes: true));
            if (ReadBounded(reader) is { } text) return new SourceText(path.Replace('\\', '/'), text);
            problem = TooLarge;
        }
        catch (DecoderFallbackException)
        {
            problem = "it is no UTF-8 text";
        }
        catch (UnauthorizedAccessException)
        {
            problem = "reading it is not permitted";
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            problem = "it cannot be opened";
        }
        return null;
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
