using Lanewright.Findings;
using Lanewright.Model.Links;

namespace Lanewright.Rules.Pathways;

/// <summary>A wish for ways apart that no two cables can take.</summary>
internal sealed class NothingToKeepApart() : Rule("LW4109", nameof(NothingToKeepApart), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        var paired = judgement.Pathways.Value.Pairs
            .SelectMany(p => new[] { plan.Links.Statement(p.One), plan.Links.Statement(p.Other) }).ToHashSet();
        foreach (var statement in plan.Statements)
        {
            if (statement.ApartFrom is not { } other || paired.Contains(statement.Index)) continue;
            var why = judgement.Design.Lengths.Ways is null
                ? "the plan has no pathways"
                : HasLinksOfBoth(plan, statement, plan.Statements[other])
                    ? "their links lie in one rack, or are kept apart in pairs with other sets already"
                    : "no device has links of both";
            judgement.Add(this, statement.Span,
                $"'{statement.Name}' is to be kept apart from '{plan.Statements[other].Name}', and nothing is: {why}", statement.Name);
        }
    }

    private static bool HasLinksOfBoth(Model.Plan plan, LinkStatement one, LinkStatement other)
    {
        var ends = new HashSet<int>[] { [], [] };
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (plan.Links.Statement(link) == one.Index) ends[0].UnionWith([plan.Links.FromDevice(link), plan.Links.ToDevice(link)]);
            if (plan.Links.Statement(link) == other.Index) ends[1].UnionWith([plan.Links.FromDevice(link), plan.Links.ToDevice(link)]);
        }
        return ends[0].Overlaps(ends[1]);
    }
}
