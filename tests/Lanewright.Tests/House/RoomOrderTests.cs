using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Lanewright.Tests.House;

/// <summary>A room uses only rooms above it. Every name is resolved by the compiler library, so no alias or using hides a use.</summary>
public sealed class RoomOrderTests
{
    private static readonly string[] Rooms =
        ["Quantities", "Text", "Findings", "Notation", "Standards", "Model", "Engineering", "Rules", "Deliverables", ""];

    /// <summary>Rooms above that a room must not use all the same.</summary>
    private static readonly (string Room, string Never)[] Forbidden =
    [
        ("Engineering", "Findings"),
        ("Engineering", "Notation"),
        ("Rules", "Deliverables"),
    ];

    [Fact]
    public void Library_BindsWithoutErrors()
    {
        var errors = LibrarySource.Compiled.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error);
        Assert.Empty(errors.Take(5).Select(d => d.ToString()));
    }

    [Fact]
    public void EveryFolder_IsARoom()
    {
        var folders = Directory.EnumerateDirectories(LibrarySource.Folder).Select(Path.GetFileName).Where(f => f is not ("bin" or "obj"));
        Assert.Empty(folders.Except(Rooms));
    }

    [Fact]
    public void EveryName_BelongsToARoomAbove()
    {
        var faults = new SortedSet<string>(StringComparer.Ordinal);
        var seen = 0;
        foreach (var tree in LibrarySource.Compiled.SyntaxTrees)
        {
            var room = LibrarySource.RoomOf(tree);
            var model = LibrarySource.Compiled.GetSemanticModel(tree);
            foreach (var name in tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>())
            {
                if (UsedRoom(model.GetSymbolInfo(name).Symbol) is not { } used) continue;
                seen++;
                if (IsAllowed(room, used)) continue;
                var line = tree.GetLineSpan(name.Span).StartLinePosition.Line + 1;
                faults.Add($"{Path.GetRelativePath(LibrarySource.Folder, tree.FilePath)}:{line} in {room} uses {name} of {used}");
            }
        }
        Assert.True(seen > 5000, $"only {seen} names were resolved: the check has gone blind");
        Assert.Empty(faults);
    }

    private static bool IsAllowed(string room, string used) =>
        Array.IndexOf(Rooms, used) <= Array.IndexOf(Rooms, room) && !Forbidden.Contains((room, used));

    /// <summary>The room a symbol of ours belongs to; null for anything else.</summary>
    private static string? UsedRoom(ISymbol? symbol)
    {
        if (symbol is null or INamespaceSymbol) return null;
        var type = symbol as INamedTypeSymbol ?? symbol.ContainingType;
        var home = type?.ContainingNamespace?.ToDisplayString() ?? "";
        if (home == "Lanewright") return "";
        return home.StartsWith("Lanewright.", StringComparison.Ordinal) ? home.Split('.')[1] : null;
    }
}
