using Lanewright.Findings;

namespace Lanewright.Tests.Support;

/// <summary>The one helper of plan tests: compiles a text and holds its findings against what is expected.</summary>
internal static class Expect
{
    /// <summary>The plan raises exactly these error and warning codes, each at least once, and no other error or warning.</summary>
    public static Compilation Codes(string plan, params string[] codes)
    {
        var compilation = PlanBlock.Compile(plan);
        var raised = compilation.Findings.Where(f => f.Severity != Severity.Advice).Select(f => f.Kind.Code).Distinct().Order().ToArray();
        Assert.True(codes.Order().SequenceEqual(raised), $"expected [{string.Join(' ', codes.Order())}], got:\n{Text(compilation)}");
        return compilation;
    }

    /// <summary>The plan raises no error and no warning.</summary>
    public static Compilation Clean(string plan) => Codes(plan);

    /// <summary>All findings as lines.</summary>
    public static string Text(Compilation compilation) => string.Join('\n', compilation.Findings.Select(f =>
        $"{f.Span.Position.Line}:{f.Span.Position.Column} {f.Severity} {f.Kind.Code} {f.Kind.Name}: {f.Message}"));
}
