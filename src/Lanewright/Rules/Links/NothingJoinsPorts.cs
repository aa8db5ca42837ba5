using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A link for which the catalogue holds no part at all that goes into both ports.</summary>
internal sealed class NothingJoinsPorts() : Rule("LW2703", nameof(NothingJoinsPorts))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var choice in judgement.Design.Choices)
        {
            if (!choice.Candidates.IsEmpty || choice.Class.Needed is null) continue;
            judgement.Add(this, choice,
                $"nothing in the catalogue joins {Port(choice.Class.From, choice)} and {Port(choice.Class.To, choice)} "
                + $"at {choice.Class.Statement.Rate}{Wanted(choice)}; "
                + "choose other models, another split, or add the part to the catalogue");
        }
    }

    private static string Port(EndSpec end, ClassChoice choice) =>
        $"{HostSideChecks.Article(end.Cage.FormFactor.Name)} cage of {end.Cage.LanesText}"
        + (end.Ways > 1 ? $" split {end.Ways}x{choice.Class.Statement.Rate}" : "")
        + (Lists(end, choice) ? "" : $" (whose platform lists only {string.Join(", ", end.Cage.Modes)})");

    private static bool Lists(EndSpec end, ClassChoice choice) =>
        end.Cage.Modes.Any(m => m.Ways == end.Ways && m.Rate == choice.Class.Statement.Rate);

    private static string Wanted(ClassChoice choice)
    {
        var s = choice.Class.Statement;
        var type = s.Type?.Name ?? s.CopperType?.Name;
        return (type is null ? "" : $" with {type}") + (s.Media.IsEmpty ? "" : " over " + string.Join(" or ", s.Media));
    }
}
