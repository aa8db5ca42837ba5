using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>What a list of comparisons comes to as a whole.</summary>
public static class Checks
{
    /// <summary>The worst verdict; advice does not count.</summary>
    public static Verdict Verdict(IEnumerable<Check> checks)
    {
        var worst = Links.Verdict.Pass;
        foreach (var check in checks)
            if (!check.IsAdvice && check.Verdict > worst) worst = check.Verdict;
        return worst;
    }

    /// <summary>The weakest mark; advice does not count.</summary>
    public static Mark Mark(IEnumerable<Check> checks)
    {
        var weakest = Text.Mark.Seen;
        foreach (var check in checks)
            if (!check.IsAdvice) weakest = Marks.Weaker(weakest, check.Mark);
        return weakest;
    }

    /// <summary>The verdict in one word.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Links.Verdict.Pass => "pass",
        Links.Verdict.Unproven => "unproven",
        _ => "fail",
    };
}
