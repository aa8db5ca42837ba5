using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A margin smaller than the most that penalties may take which are known at one point only, so that nobody can tell.</summary>
internal sealed class LineReserveThin() : LineRule("LW5113", nameof(LineReserveThin))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        var thin =
            from route in line.Routes
            where route.Answer.Design.Verdict == Verdict.Unproven
            from check in route.Answer.Design.Checks
            where check is { Name: LineCheckNames.Reserve, Verdict: Verdict.Unproven }
            orderby check.Margin
            select (route, check);
        foreach (var (route, check) in thin.Take(1))
            Say(judgement, line, $"over {route.Name} it cannot be proved to work: {LineWords.Describe(check)}; keep that much beside the "
                + "requirement",
                new Evidence(check.Name, check.Value, check.Limit, check.Unit, check.Source));
    }
}
