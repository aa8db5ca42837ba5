namespace Lanewright.Deliverables.Tables;

/// <summary>How a column is written for people.</summary>
public enum ColumnKind
{
    /// <summary>Words.</summary>
    Text,

    /// <summary>Whole numbers.</summary>
    Whole,

    /// <summary>Money with two decimals.</summary>
    Money,

    /// <summary>Numbers with up to two decimals.</summary>
    Real,
}
