using System.Collections.Immutable;
using Lanewright.Text;

namespace Lanewright.Findings;

/// <summary>Collects findings, each cause once, and gives them back in the order of the plan.</summary>
public sealed class FindingSink
{
    /// <summary>More findings than this of one kind help nobody; the rest are counted.</summary>
    public const int MostOfOneKind = 200;

    private readonly List<Finding> findings = [];
    private readonly HashSet<(string Code, SourceText? Source, int Start, string Message)> seen = [];
    private readonly Dictionary<string, int> countByCode = new(StringComparer.Ordinal);
    private List<Finding>? record;

    /// <summary>How many errors were collected.</summary>
    public int ErrorCount { get; private set; }

    /// <summary>Whether a further finding of a kind would only be counted, so that nobody need think about its words.</summary>
    public bool IsFullOf(FindingKind kind) => countByCode.GetValueOrDefault(kind.Code) >= MostOfOneKind;

    /// <summary>Adds a finding unless the same one is there.</summary>
    public void Add(Finding finding)
    {
        record?.Add(finding);
        if (!seen.Add((finding.Kind.Code, finding.Span.Source, finding.Span.Start, finding.Message))) return;
        var count = countByCode[finding.Kind.Code] = countByCode.GetValueOrDefault(finding.Kind.Code) + 1;
        if (finding.Severity == Severity.Error) ErrorCount++;
        if (count <= MostOfOneKind) findings.Add(finding);
    }

    /// <summary>Does a piece of work that may add findings.</summary>
    /// <param name="work">The work.</param>
    /// <param name="added">What it adds, in the order of adding and with what was there before, so that it can be added again.</param>
    public T Recording<T>(Func<T> work, out ImmutableArray<Finding> added)
    {
        var outer = record;
        List<Finding> own = record = [];
        try
        {
            return work();
        }
        finally
        {
            record = outer;
            outer?.AddRange(own);
            added = [.. own];
        }
    }

    /// <summary>Whether nothing collected so far can change what is found in some texts: nothing was found in them, and there is room for
    /// more of every kind.</summary>
    /// <param name="sources">The texts.</param>
    /// <param name="more">What will be found in them, as far as it is known.</param>
    public bool IsFreshFor(ImmutableArray<SourceText> sources, ImmutableArray<Finding> more) =>
        seen.All(s => s.Source is null || !sources.Contains(s.Source))
        && countByCode.Values.All(c => c + more.Length < MostOfOneKind);

    /// <summary>Adds a finding with the weight of its kind.</summary>
    public void Add(FindingKind kind, SourceSpan span, string message) =>
        Add(new Finding(kind, kind.Severity, span, Quoted.Shorten(message)));

    /// <summary>Whether an error was found within a piece of a file: what hangs on that piece is then no longer judged.</summary>
    public bool HasErrorIn(SourceSpan span) => span.Source is not null && findings.Exists(f =>
        f.Severity == Severity.Error
        && f.Span.Source == span.Source
        && f.Span.Start >= span.Start
        && f.Span.Start < span.Start + span.Length);

    /// <summary>All findings: by file, place, code and text.</summary>
    public ImmutableArray<Finding> ToSorted() =>
        [.. findings
            .OrderBy(f => f.Span.Path, StringComparer.Ordinal)
            .ThenBy(f => f.Span.Start)
            .ThenBy(f => f.Kind.Code, StringComparer.Ordinal)
            .ThenBy(f => f.Message, StringComparer.Ordinal)];
}
