using System.Runtime.CompilerServices;

namespace Lanewright.Tests.Support;

/// <summary>Where the checkout stands.</summary>
internal static class Repository
{
    /// <summary>The root folder.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A path below the root.</summary>
    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string FindRoot([CallerFilePath] string here = "")
    {
        // A deterministic build maps source paths, so the test's own folder is the second place to look from.
        foreach (var start in new[] { System.IO.Path.GetDirectoryName(here), AppContext.BaseDirectory })
        {
            for (var folder = start; folder is not null; folder = System.IO.Path.GetDirectoryName(folder))
                if (File.Exists(System.IO.Path.Combine(folder, "Lanewright.slnx"))) return folder;
        }
        throw new InvalidOperationException("the tests run inside the checkout");
    }
}
