using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Lanewright.Tests.Support;

/// <summary>The library's own source, parsed and bound by the C# compiler library.</summary>
internal static class LibrarySource
{
    private static readonly Lazy<CSharpCompilation> CompiledOnce = new(Compile);

    /// <summary>The folder of the library.</summary>
    public static string Folder { get; } = Repository.Path("src", "Lanewright");

    /// <summary>The source, bound.</summary>
    public static CSharpCompilation Compiled => CompiledOnce.Value;

    /// <summary>The room a file stands in: the first folder below the library, or empty for a file beside the rooms.</summary>
    public static string RoomOf(SyntaxTree tree)
    {
        var relative = Path.GetRelativePath(Folder, tree.FilePath).Replace('\\', '/');
        return relative.Contains('/') ? relative[..relative.IndexOf('/')] : "";
    }

    private static CSharpCompilation Compile()
    {
        var options = new CSharpParseOptions(LanguageVersion.Latest);
        var trees = Directory.EnumerateFiles(Folder, "*.cs", SearchOption.AllDirectories)
            .Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), options, f))
            .Append(CSharpSyntaxTree.ParseText(
                "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
                + "global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;",
                options,
                Path.Combine(Folder, "implicit.cs")));
        var platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(p => !Path.GetFileName(p).StartsWith("Lanewright", StringComparison.OrdinalIgnoreCase))
            .Select(p => MetadataReference.CreateFromFile(p));
        var settings = new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable, allowUnsafe: false);
        return CSharpCompilation.Create("Lanewright.Check", trees, platform, settings);
    }
}
