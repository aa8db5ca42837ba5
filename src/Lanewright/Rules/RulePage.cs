using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Rules;

/// <summary>The page of a kind of finding: what it means, why it matters, an example that raises it, and how to put it right.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Text">The page as Markdown.</param>
public sealed record RulePage(FindingKind Kind, string Text)
{
    /// <summary>The headings every page has, in this order.</summary>
    public static ImmutableArray<string> Headings { get; } = ["What it means", "Why it matters", "Example", "Put right", "Source"];

    /// <summary>The page of a code or a name, whatever the case; null when there is none.</summary>
    public static RulePage? Find(string codeOrName)
    {
        var kind = RuleBook.Kinds.FirstOrDefault(k =>
            k.Code.Equals(codeOrName, StringComparison.OrdinalIgnoreCase) || k.Name.Equals(codeOrName, StringComparison.OrdinalIgnoreCase));
        if (kind is null) return null;
        var name = "rules/" + kind.Name + ".md";
        return EmbeddedText.Names(name).Contains(name) ? new RulePage(kind, EmbeddedText.Read(name).Content) : null;
    }

    /// <summary>The text under a heading; empty when the page has none.</summary>
    public string Section(string heading)
    {
        var start = Text.IndexOf("\n## " + heading + "\n", StringComparison.Ordinal);
        if (start < 0) return "";
        start += heading.Length + 5;
        var end = Text.IndexOf("\n## ", start, StringComparison.Ordinal);
        return (end < 0 ? Text[start..] : Text[start..end]).Trim();
    }

    /// <summary>The plan blocks under a heading. A block may hold several files, each begun by a line <c># file: NAME</c>.</summary>
    public ImmutableArray<string> Plans(string heading)
    {
        var plans = ImmutableArray.CreateBuilder<string>();
        var section = Section(heading);
        const string Fence = "```";
        var at = section.IndexOf(Fence + "plan\n", StringComparison.Ordinal);
        while (at >= 0)
        {
            var start = at + Fence.Length + 5;
            var end = section.IndexOf("\n" + Fence, start, StringComparison.Ordinal);
            if (end < 0) break;
            plans.Add(section[start..(end + 1)]);
            at = section.IndexOf(Fence + "plan\n", end, StringComparison.Ordinal);
        }
        return plans.ToImmutable();
    }
}
