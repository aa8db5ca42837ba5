using System.Text.RegularExpressions;
using Lanewright.Deliverables;

namespace Lanewright.Cli;

/// <summary>Writes documents into a folder. All are written beside their places first and moved there together, so none is ever half
/// written and a set that cannot be written leaves the one before it whole.</summary>
internal static partial class DocumentFolder
{
    private const string Beside = ".partial";

    /// <summary>Writes all; returns their names.</summary>
    public static IReadOnlyList<string> Write(string folder, IReadOnlyList<Deliverable> documents, Action<string> progress)
    {
        if (string.IsNullOrWhiteSpace(folder)) throw new UsageFault("the folder for the documents has no name; write --out FOLDER");
        try
        {
            WriteBeside(folder, documents, progress);
            foreach (var document in documents) Require(Path.Combine(folder, document.Name));
            foreach (var document in documents) Place(Path.Combine(folder, document.Name));
            DropOldDocuments(folder, documents);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UsageFault($"the documents cannot be written to '{folder}': {fault.Message}");
        }
        finally
        {
            foreach (var path in documents.Select(d => Path.Combine(folder, d.Name) + Beside).Where(File.Exists)) File.Delete(path);
        }
        return [.. documents.Select(d => d.Name)];
    }

    private static void WriteBeside(string folder, IReadOnlyList<Deliverable> documents, Action<string> progress)
    {
        foreach (var inside in documents.Select(d => Path.GetDirectoryName(Path.Combine(folder, d.Name)) ?? ".").Distinct())
            Directory.CreateDirectory(inside);
        var faults = new List<Exception>();
        // Documents do not depend on one another; two cores write two at a time.
        Parallel.ForEach(documents, document =>
        {
            progress("writing " + document.Name);
            try
            {
                var path = Path.Combine(folder, document.Name) + Beside;
                using var stream = new FileStream(path, FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16);
                document.Write(stream);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                lock (faults) faults.Add(fault);
            }
        });
        if (faults.Count > 0) throw new IOException(faults[0].Message);
    }

    /// <summary>A folder of the same name is the one thing in the way that can be seen beforehand.</summary>
    private static void Require(string path)
    {
        if (Directory.Exists(path)) throw new IOException($"'{path}' is a folder");
    }

    private static void Place(string path) => File.Move(path + Beside, path, overwrite: true);

    /// <summary>Tables and drawings of what the plan no longer has would be built from; other files in the folder are not ours.</summary>
    private static void DropOldDocuments(string folder, IReadOnlyList<Deliverable> documents)
    {
        var drawings = Path.Combine(folder, "drawings");
        if (documents.All(d => d.Name != "findings.json")) return;
        foreach (var name in DeliverySet.OfSomePlans.Where(n => documents.All(d => d.Name != n)))
            File.Delete(Path.Combine(folder, name));
        if (!Directory.Exists(drawings)) return;
        var written = documents.Select(d => Path.GetFileName(d.Name)).ToHashSet(StringComparer.Ordinal);
        foreach (var file in Directory.GetFiles(drawings))
            if (OurDrawing().IsMatch(Path.GetFileName(file)) && !written.Contains(Path.GetFileName(file))) File.Delete(file);
    }

    [GeneratedRegex(
        "^(K[0-9]+[a-z]*-(ribbon|ladder)|D[0-9]+-(load|failures)|W[0-9]+[a-z]-(power|spectrum|sweep|single-line)|M[0-9]+-map"
        + "|E[0-9]+-(front|rear)|F[0-9]+-floor|X[0-9]+-section|T[0-9]+-trace|P[0-9]+-panels|option-sheet|break-even-[a-z-]+)\\.(svg|png)$")]
    private static partial Regex OurDrawing();
}
