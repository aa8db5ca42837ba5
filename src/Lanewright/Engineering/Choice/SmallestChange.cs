using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Where no way passes: the smallest change that would make one pass.</summary>
public static class SmallestChange
{
    /// <summary>A sentence, or null when no single change is enough.</summary>
    public static string? Of(Plan plan, ClassChoice choice)
    {
        // Candidates are in order: those that fail by one comparison and by little come first.
        var near = choice.Candidates
            .Where(s => s.Verdict == Verdict.Fail && IsOneCause(s) && IsEnough(Failing(s), s))
            .OrderBy(s => AnotherPortDoes(plan, choice, s) ? PortWeight : Weight(Failing(s)))
            .ThenBy(Ranking.Shortfall)
            .ThenBy(s => s.Price)
            .ThenBy(s => s.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        if (near is null) return null;
        var cure = AnotherPortDoes(plan, choice, near)
            ? $"take another port ({string.Join("; ", AllFailing(near).Select(c => BetterPorts.Words(plan, choice.Class, near, c)))})"
            : Cure(Failing(near), near);
        var open = near.Checks.Where(c => c.Verdict == Verdict.Unproven && !c.IsAdvice).Select(c => c.Name).ToList();
        var rest = open.Count == 0 ? "" : $", its {string.Join(" and ", open)} unproven";
        return $"{cure}; then {WithoutLength(near)} would do{rest}";
    }

    /// <summary>One comparison fails, or several that all come of too long a way.</summary>
    private static bool IsOneCause(Solution solution)
    {
        var failing = AllFailing(solution).Select(c => c.Name).Distinct().ToList();
        return failing.Count == 1 || (failing.Contains(CheckNames.Reach) && failing.All(GrowsWithLength));
    }

    /// <summary>Whether all that fails is a limit of a port, and the device has a port without it.</summary>
    private static bool AnotherPortDoes(Plan plan, ClassChoice choice, Solution solution) => AllFailing(solution).All(c =>
        c.Name is CheckNames.ModulePower or CheckNames.HighPower or CheckNames.PortMode or CheckNames.HostInterface
        && c.End.Length > 0
        && !BetterPorts.Of(plan, choice.Class, solution, c).IsEmpty);

    private static List<Check> AllFailing(Solution solution) =>
        [.. solution.Checks.Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice)];

    private static bool GrowsWithLength(string check) => check is CheckNames.Reach or CheckNames.ChannelLoss or CheckNames.PowerBudget
        or CheckNames.DispersionPositive or CheckNames.DispersionNegative or CheckNames.Dgd or CheckNames.Latency;

    /// <summary>A cable that is too short for its way can be ordered longer only as far as it is made and as far as it reaches.</summary>
    private static bool IsEnough(Check failing, Solution solution)
    {
        // To do with half of the way is no small change but another plan.
        if (failing is { Name: CheckNames.Reach, Value: { } length, Limit: { } reach } && reach < length / 2) return false;
        if (failing.Name != CheckNames.FixedLength || failing.Limit is not { } way) return true;
        return (solution.Cable is not AssemblyModel || solution.Cable.OrderedFor(Length.FromMetres(way)) is not null)
            && solution.Checks.All(c => c.Name != CheckNames.Reach || c.Limit is not { } most || most >= way);
    }

    /// <summary>The change may be one of the length, so the length judged is left out of the name.</summary>
    private static string WithoutLength(Solution solution) => solution.Name.Replace($" {solution.Length}", "", StringComparison.Ordinal);

    private static Check Failing(Solution solution)
    {
        var failing = AllFailing(solution);
        return failing.Find(c => c.Name == CheckNames.Reach) ?? failing[0];
    }

    /// <summary>Another port is a word in the plan, next to a setting.</summary>
    private const int PortWeight = 1;

    /// <summary>A word in the policy is changed more easily than a length, a length more easily than a platform.</summary>
    private static int Weight(Check check) => check.Name switch
    {
        CheckNames.Forbidden or CheckNames.Draft or CheckNames.CopperPractice => 0,
        CheckNames.HostFec or CheckNames.Autonegotiation or CheckNames.Training => 1,
        CheckNames.ChannelLoss or CheckNames.PowerBudget or CheckNames.Reflectance or CheckNames.ReturnLoss => 2,
        CheckNames.Reach or CheckNames.CopperLoss or CheckNames.FixedLength or CheckNames.MinimumLength or CheckNames.Latency => 3,
        CheckNames.BendSpace or CheckNames.Overload => 4,
        _ => 5,
    };

    private static string Cure(Check check, Solution solution)
    {
        var gap = check.Margin is { } margin ? Numerals.Shown(Math.Abs(margin), check.MarginUnit) : "";
        var limit = check.Limit is { } l ? Numerals.Shown(l, check.Unit) : "";
        return check.Name switch
        {
            CheckNames.Forbidden => $"allow {solution.MediumName} in the policy",
            CheckNames.Draft => "allow drafts in the policy",
            CheckNames.CopperPractice => $"raise the project's own copper limit by {gap}",
            CheckNames.ChannelLoss or CheckNames.PowerBudget => $"take {gap} out of the channel",
            CheckNames.Reflectance => $"use connections that reflect at most {limit}",
            CheckNames.ReturnLoss => $"raise the return loss of the channel by {gap}",
            CheckNames.Reach => $"shorten the way by {gap}, to {limit}",
            CheckNames.CopperLoss => $"take {gap} of loss out of the assembly: shorter or thicker",
            CheckNames.FixedLength => $"make the cable {gap} longer",
            CheckNames.MinimumLength => $"make the link {gap} longer",
            CheckNames.Latency => $"allow {gap} more delay",
            CheckNames.BendSpace => $"give {gap} more space between ports and door",
            CheckNames.Overload => $"put {gap} of attenuation before the receiver",
            CheckNames.Connector or CheckNames.FanOut => $"add to the catalogue what is missing ({check.Note})",
            _ => $"change what stands in the way ({(check.Note.Length > 0 ? check.Note : check.Name)})",
        };
    }
}
