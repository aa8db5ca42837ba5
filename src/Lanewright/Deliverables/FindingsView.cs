using System.Collections.Immutable;
using Lanewright.Deliverables.Tables;
using Lanewright.Findings;

namespace Lanewright.Deliverables;

/// <summary>The findings as a table.</summary>
public static class FindingsView
{
    /// <summary>The table.</summary>
    public static TableView Of(ImmutableArray<Finding> findings) => new("findings",
    [
        new("severity", 10), new("code", 9), new("name", 26), new("file", 20), new("line", 6, ColumnKind.Whole),
        new("column", 7, ColumnKind.Whole),
        new("links", 8, ColumnKind.Whole), new("message", 90, ColumnKind.Prose),
        new("evidence", 50, ColumnKind.Prose),
    ], () => Rows(findings));

    /// <summary>A severity in one word.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "advice",
    };

    private static IEnumerable<Cell[]> Rows(ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var at = finding.Span.Source is null ? default : finding.Span.Position;
            yield return
            [
                Word(finding.Severity), finding.Kind.Code, finding.Kind.Name, finding.Span.Path,
                at.Line > 0 ? at.Line : Cell.Empty, at.Line > 0 ? at.Column : Cell.Empty,
                finding.Count, finding.Message, finding.Evidence?.ToString() ?? "",
            ];
        }
    }
}
