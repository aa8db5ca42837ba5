using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Tests.Support;

/// <summary>The one helper of plan tests: compiles a text and holds its findings against what is expected.</summary>
internal static class Expect
{
    /// <summary>The plan raises exactly these error and warning codes, each at least once, and no other error or warning.</summary>
    public static JudgedPlan Codes(string plan, params string[] codes)
    {
        var judged = PlanBlock.Compile(plan);
        var raised = judged.Findings.Where(f => f.Severity != Severity.Advice).Select(f => f.Kind.Code).Distinct().Order().ToArray();
        Assert.True(codes.Order().SequenceEqual(raised), $"expected [{string.Join(' ', codes.Order())}], got:\n{Text(judged)}");
        return judged;
    }

    /// <summary>The plan raises no error and no warning.</summary>
    public static JudgedPlan Clean(string plan) => Codes(plan);

    /// <summary>The plan with what was computed from it; the test fails when nothing could be made of it.</summary>
    public static DesignedPlan Designed(JudgedPlan judged)
    {
        Assert.True(judged.Designed is not null, Text(judged));
        return judged.Designed;
    }

    /// <summary>All findings as lines.</summary>
    public static string Text(JudgedPlan judged) => string.Join('\n', judged.Findings.Select(f =>
        $"{f.Span.Position.Line}:{f.Span.Position.Column} {f.Severity} {f.Kind.Code} {f.Kind.Name}: {f.Message}"));
}
