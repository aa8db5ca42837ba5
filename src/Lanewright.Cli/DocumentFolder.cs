using Lanewright.Deliverables;

namespace Lanewright.Cli;

/// <summary>Writes documents into a folder. Each is written beside its place and then moved there, so none is ever half
/// written.</summary>
internal static class DocumentFolder
{
    /// <summary>Writes all; returns their names.</summary>
    public static IReadOnlyList<string> Write(string folder, IReadOnlyList<Deliverable> documents, Action<string> progress)
    {
        Directory.CreateDirectory(folder);
        var faults = new List<Exception>();
        // Documents do not depend on one another; two cores write two at a time.
        Parallel.ForEach(documents, document =>
        {
            progress("writing " + document.Name);
            try
            {
                WriteOne(Path.Combine(folder, document.Name), document);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                lock (faults) faults.Add(fault);
            }
        });
        return faults.Count > 0
            ? throw new UsageFault($"the documents cannot be written to '{folder}': {faults[0].Message}")
            : [.. documents.Select(d => d.Name)];
    }

    private static void WriteOne(string path, Deliverable document)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path) ?? ".");
        var beside = path + ".partial";
        try
        {
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16))
                document.Write(stream);
            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
