using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>One route of a line, as its drawings name it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Line">The line.</param>
/// <param name="Route">Which of its routes.</param>
internal sealed record LineSheet(Plan Plan, LineResult Line, int Route)
{
    /// <summary>How it is built.</summary>
    public LineDesign Design => Line.Routes[Route].Answer.Design;

    /// <summary>Its name among drawings, cables and derivations.</summary>
    public string Name => Identifiers.Line(Line.Statement.Index, Route);

    /// <summary>The identifier of a drawing of it.</summary>
    public string Id(string kind) => $"{Name}-{kind}";

    /// <summary>The line and its way in words.</summary>
    public string Words => $"{Line.Statement.Name} over {Line.Routes[Route].ShortName}";

    /// <summary>The strip at the foot.</summary>
    public TitleBlock Block => TitleBlock.Of(Plan, Line.Statement.Name,
        ("line", Words, 2.8), ("scheme", LineWords.Name(Design.Scheme), 3.4), ("type", Design.TypeName, 1.3),
        ("verdict", Checks.Word(Line.Routes[Route].Verdict), 0.9), ("weakest mark", Marks.Name(Design.Mark), 2.3));

    /// <summary>A value and its unit, in two decimals at most.</summary>
    public static string Of(double value, string unit) => Numerals.Unit(Math.Round(value, 2), unit);
}
