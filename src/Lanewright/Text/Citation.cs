namespace Lanewright.Text;

/// <summary>Where a value comes from, and how well it is known.</summary>
/// <param name="Document">The standard, agreement or page that sets the value.</param>
/// <param name="Clause">Clause, annex or table; empty when the document has none.</param>
/// <param name="Edition">Edition or year; empty when not known.</param>
/// <param name="Mark">How well the value is known.</param>
/// <param name="ReadIn">Keys of the texts it was read in (see data/standards/documents.csv); empty when recalled.</param>
/// <param name="Note">What a reader should know beside it; empty when nothing.</param>
public sealed record Citation(string Document, string Clause, string Edition, Mark Mark, string ReadIn = "", string Note = "")
{
    /// <summary>A value the plan itself states.</summary>
    public static Citation OfPlan { get; } = new("plan", "", "", Mark.Seen);

    /// <summary>Document, clause and edition in one line.</summary>
    public override string ToString()
    {
        var clause = Clause.Length == 0 ? "" : char.IsAsciiDigit(Clause[0]) ? " clause " + Clause : " " + Clause;
        return Document + clause + (Edition.Length == 0 ? "" : " (" + Edition + ")");
    }
}
