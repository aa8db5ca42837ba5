using Lanewright.Findings;

namespace Lanewright.Standards;

/// <summary>What can be wrong with a table of standards values.</summary>
public static class StandardsFindings
{
    /// <summary>A row without a document or a known mark.</summary>
    public static FindingKind SourceMissing { get; } = new("LW0201", "SourceMissing", Severity.Error);

    /// <summary>The same value of the same thing twice in one table.</summary>
    public static FindingKind ValueRepeated { get; } = new("LW0202", "ValueRepeated", Severity.Error);

    /// <summary>A value that is not a number where one is needed, or in another unit than its field.</summary>
    public static FindingKind LimitUnreadable { get; } = new("LW0203", "LimitUnreadable", Severity.Error);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [SourceMissing, ValueRepeated, LimitUnreadable];
}
