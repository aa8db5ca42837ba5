using Lanewright.Findings;

namespace Lanewright.Workbench.Sheets;

/// <summary>Findings of two texts of a plan, paired where both say the same of the same place. Lines move when text is typed above them,
/// and a finding that gives other numbers is neither new nor gone.</summary>
internal sealed class FindingPairs
{
    private readonly List<(Finding Was, Finding Is)> changed = [];
    private List<Finding> saved;
    private List<Finding> typed;

    /// <summary>Pairs them: those that are word for word the same first, then those about the same thing, then those at the same
    /// statement.</summary>
    public FindingPairs(IEnumerable<Finding> saved, IEnumerable<Finding> typed)
    {
        (this.saved, this.typed) = ([.. saved], [.. typed]);
        _ = Pair(f => $"{f.Severity} {f.Message}");
        changed.AddRange(Pair(f => f.Subject.Length > 0 ? $"{f.Span.Path}\n{f.Subject}" : ""));
        changed.AddRange(Pair(Statement));
    }

    /// <summary>Findings only the typed text has.</summary>
    public IReadOnlyList<Finding> New => typed;

    /// <summary>Findings only the saved text has.</summary>
    public IReadOnlyList<Finding> Gone => saved;

    /// <summary>Findings both have, in other words.</summary>
    public IReadOnlyList<(Finding Was, Finding Is)> Changed => changed;

    /// <summary>Takes out pairs of a code and a key; an empty key has no pair.</summary>
    private List<(Finding Was, Finding Is)> Pair(Func<Finding, string> keyOf)
    {
        var open = saved.Select(f => (Finding: f, Key: keyOf(f))).Where(f => f.Key.Length > 0)
            .GroupBy(f => (f.Finding.Kind.Code, f.Key), f => f.Finding).ToDictionary(g => g.Key, g => new Queue<Finding>(g));
        var (pairs, left) = (new List<(Finding, Finding)>(), new List<Finding>());
        var taken = new HashSet<Finding>(ReferenceEqualityComparer.Instance);
        foreach (var now in typed)
        {
            if (open.TryGetValue((now.Kind.Code, keyOf(now)), out var queue) && queue.TryDequeue(out var was))
            {
                pairs.Add((was, now));
                _ = taken.Add(was);
            }
            else
            {
                left.Add(now);
            }
        }
        (saved, typed) = ([.. saved.Where(f => !taken.Contains(f))], left);
        return pairs;
    }

    /// <summary>The file and the name that the line begins with; what follows the name may be what was changed.</summary>
    private static string Statement(Finding finding)
    {
        if (finding.Span.Source is not { } source) return "";
        var line = source.Line(finding.Span.Position.Line).Trim().ToString();
        var end = line.IndexOfAny([':', ',']);
        return $"{finding.Span.Path}\n{(end > 0 ? line[..end] : line)}";
    }
}
