using System.Text;

namespace Lanewright.Workbench.Desk;

/// <summary>The folder of the opened plan: the only place on disk that is read or written. What a link leads to outside of it is
/// outside.</summary>
internal sealed class PlanFolder
{
    /// <summary>Larger files are no plan.</summary>
    public const int LargestFile = 16 * 1024 * 1024;

    private const int MostLinks = 40;
    private const string Beside = ".partial";
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>Takes the folder.</summary>
    public PlanFolder(string root) => Root = Real(Path.GetFullPath(root), MostLinks) ?? Path.GetFullPath(root);

    /// <summary>Its real path.</summary>
    public string Root { get; }

    /// <summary>The real path of a file of this folder; null when it lies elsewhere.</summary>
    public string? Locate(string name)
    {
        if (name.Length == 0 || name.Contains('\0')) return null;
        var real = Real(Path.GetFullPath(Path.Combine(Root, name)), MostLinks);
        return real is not null && real.StartsWith(Root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal) ? real : null;
    }

    /// <summary>The text of a file; null with the reason when it cannot be read.</summary>
    public string? Read(string name, out string problem)
    {
        problem = "";
        if (Locate(name) is not { } path)
        {
            problem = "it lies outside the folder of the plan, and the workbench reads nothing else";
            return null;
        }
        try
        {
            var file = new FileInfo(path);
            problem = !file.Exists ? Directory.Exists(path) ? "it is a folder" : "it does not exist"
                : file.Length > LargestFile ? "it is larger than 16 MiB"
                : "";
            if (problem.Length > 0) return null;
            using var reader = new StreamReader(path, Strict);
            return reader.ReadToEnd();
        }
        catch (DecoderFallbackException)
        {
            problem = "it is no UTF-8 text";
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            problem = fault is UnauthorizedAccessException ? "reading it is not permitted" : "it cannot be opened";
        }
        return null;
    }

    /// <summary>Whether anything stands where a file would be written, readable or not.</summary>
    public bool IsTaken(string name) => Locate(name) is not { } path || Path.Exists(path);

    /// <summary>When a file was last written and how long it is: equal while nobody touched it.</summary>
    public (DateTime Written, long Length) StampOf(string name)
    {
        if (Locate(name) is not { } path) return default;
        var file = new FileInfo(path);
        return file.Exists ? (file.LastWriteTimeUtc, file.Length) : default;
    }

    /// <summary>Writes a file as a whole: it is on disk beside its place before it takes it, so no crash leaves half a text.</summary>
    public void Write(string name, string text)
    {
        var path = Locate(name) ?? throw new UnauthorizedAccessException($"'{name}' lies outside the folder of the plan");
        Directory.CreateDirectory(Path.GetDirectoryName(path) ?? Root);
        var partial = path + Beside;
        try
        {
            // What already stands there may be a link to elsewhere: it is removed, never written through.
            File.Delete(partial);
            using (var stream = new FileStream(partial, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                // Other tools of the customer may want the mark that the file began with.
                if (HasMark(path)) stream.Write(Encoding.UTF8.Preamble);
                stream.Write(Strict.GetBytes(text));
                stream.Flush(flushToDisk: true);
            }
            if (!OperatingSystem.IsWindows() && File.Exists(path)) File.SetUnixFileMode(partial, File.GetUnixFileMode(path));
            File.Move(partial, path, overwrite: true);
        }
        finally
        {
            if (File.Exists(partial)) File.Delete(partial);
        }
    }

    private static bool HasMark(string path)
    {
        if (!File.Exists(path)) return false;
        using var stream = File.OpenRead(path);
        Span<byte> first = stackalloc byte[Encoding.UTF8.Preamble.Length];
        return stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false) == first.Length
            && first.SequenceEqual(Encoding.UTF8.Preamble);
    }

    /// <summary>Removes a file if it is there.</summary>
    public void Remove(string name)
    {
        if (Locate(name) is { } path && File.Exists(path)) File.Delete(path);
    }

    /// <summary>The path with every link followed; null when links go round.</summary>
    private static string? Real(string full, int links)
    {
        var at = Path.GetPathRoot(full) ?? "";
        foreach (var part in full[at.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = Path.Combine(at, part);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                at = next;
                continue;
            }
            if (links == 0 || Real(Path.GetFullPath(Path.Combine(at, target)), links - 1) is not { } real) return null;
            at = real;
        }
        return at;
    }
}
