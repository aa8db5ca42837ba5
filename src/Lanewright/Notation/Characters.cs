using Lanewright.Findings;

namespace Lanewright.Notation;

/// <summary>Keeps control characters out of trees: what is read may be printed on terminals and written into documents.</summary>
internal static class Characters
{
    private const char Replacement = '\uFFFD';

    /// <summary>The value itself, or the same without its control characters after reporting them.</summary>
    public static ScalarNode Checked(ScalarNode scalar, FindingSink findings)
    {
        if (!scalar.Value.AsSpan().ContainsAnyInRange('\0', '\u001F') && !scalar.Value.AsSpan().ContainsAnyInRange('\u007F', '\u009F'))
            return scalar;
        if (!scalar.Value.Any(IsControl)) return scalar;
        findings.Add(NotationFindings.ValueUnreadable, scalar.Span, "a control character stands in this text; write it without");
        return scalar with { Value = string.Concat(scalar.Value.Select(c => IsControl(c) ? Replacement : c)) };
    }

    private static bool IsControl(char c) => char.IsControl(c) && c is not ('\t' or '\n' or '\r');
}
