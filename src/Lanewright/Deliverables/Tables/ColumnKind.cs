namespace Lanewright.Deliverables.Tables;

/// <summary>How a column is written for people.</summary>
public enum ColumnKind
{
    /// <summary>Words.</summary>
    Text,

    /// <summary>Sentences, which go on in further lines where the column ends.</summary>
    Prose,

    /// <summary>Words in some rows and numbers of different kinds in others.</summary>
    Mixed,

    /// <summary>Whole numbers.</summary>
    Whole,

    /// <summary>Money with two decimals.</summary>
    Money,

    /// <summary>Numbers with up to two decimals.</summary>
    Real,
}
