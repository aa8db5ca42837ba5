using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Looks names up and reports those that nothing has.</summary>
internal static class Names
{
    /// <summary>The thing found, after reporting when it is missing.</summary>
    public static T? Require<T>(T? found, string what, string name, IEnumerable<string> known, SourceSpan span, FindingSink findings)
        where T : class
    {
        if (found is not null) return found;
        var near = findings.IsFullOf(ModelFindings.NameUnknown) ? "" : Spelling.DidYouMean(name, known);
        findings.Add(ModelFindings.NameUnknown, span, $"no {what} is called '{name}'{near}");
        return null;
    }
}
