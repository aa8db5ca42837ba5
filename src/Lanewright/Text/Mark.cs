namespace Lanewright.Text;

/// <summary>How well a value is known, strongest first. A verdict carries the weakest mark of the values it used.</summary>
public enum Mark
{
    /// <summary>Read in a text that prints it.</summary>
    Seen,

    /// <summary>Computed from other rows.</summary>
    Derived,

    /// <summary>Recalled from the document and not checked against it.</summary>
    Memory,

    /// <summary>Recalled weakly, or taken over from a sister type.</summary>
    Weak,

    /// <summary>A habit of the trade without a document.</summary>
    CommonPractice,

    /// <summary>A placeholder for planning, to be replaced by a quotation.</summary>
    Invented,
}
