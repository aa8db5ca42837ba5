using Lanewright.Findings;

namespace Lanewright.Notation;

/// <summary>What can be wrong with a text before anybody asks what it means.</summary>
public static class NotationFindings
{
    /// <summary>The text is not YAML or CSV.</summary>
    public static FindingKind SyntaxFault { get; } = new("LW0101", "SyntaxFault", Severity.Error);

    /// <summary>The same key twice in one map.</summary>
    public static FindingKind KeyRepeated { get; } = new("LW0102", "KeyRepeated", Severity.Error);

    /// <summary>Too deep, too long, or too often repeated to be a plan.</summary>
    public static FindingKind TextOutOfBounds { get; } = new("LW0103", "TextOutOfBounds", Severity.Error);

    /// <summary>A key nobody asks for.</summary>
    public static FindingKind KeyUnknown { get; } = new("LW0104", "KeyUnknown", Severity.Error);

    /// <summary>A key that must be there is not.</summary>
    public static FindingKind KeyMissing { get; } = new("LW0105", "KeyMissing", Severity.Error);

    /// <summary>A list where a value belongs, or the like.</summary>
    public static FindingKind WrongKind { get; } = new("LW0106", "WrongKind", Severity.Error);

    /// <summary>A value that does not read as what is wanted.</summary>
    public static FindingKind ValueUnreadable { get; } = new("LW0107", "ValueUnreadable", Severity.Error);

    /// <summary>A file that is mentioned cannot be read or put to use.</summary>
    public static FindingKind FileUnreadable { get; } = new("LW0108", "FileUnreadable", Severity.Error);

    /// <summary>A row of a table has more or fewer cells than its header.</summary>
    public static FindingKind RowRagged { get; } = new("LW0109", "RowRagged", Severity.Error);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
        [SyntaxFault, KeyRepeated, TextOutOfBounds, KeyUnknown, KeyMissing, WrongKind, ValueUnreadable, FileUnreadable, RowRagged];
}
