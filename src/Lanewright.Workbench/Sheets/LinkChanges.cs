using Lanewright.Engineering.Links;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Links of two texts of a plan, held against one another: those that both have and that are made, judged or left a margin
/// otherwise, those alike together.</summary>
internal static class LinkChanges
{
    /// <summary>The changes, failing links and the least margins first.</summary>
    /// <param name="saved">The plan as saved.</param>
    /// <param name="was">Its links.</param>
    /// <param name="typed">The plan as typed.</param>
    /// <param name="now">Its links.</param>
    public static List<LinkChange> Of(DesignedPlan saved, LinkBook was, DesignedPlan typed, LinkBook now)
    {
        var before = Numbered(saved).ToDictionary(l => l.Key, l => l.Link);
        return
        [
            .. Numbered(typed).Where(l => before.ContainsKey(l.Key))
                .GroupBy(l => (Set: l.Key.Item1, Was: was.KindOf(before[l.Key]), Is: now.KindOf(l.Link)))
                .Where(g => IsOther(g.Key.Was, g.Key.Is))
                .Select(g => new LinkChange(g.Key.Set, g.Key.Was, g.Key.Is, g.Count()))
                .OrderByDescending(c => c.Is.Verdict == Verdict.Fail).ThenBy(c => c.Is.Margin ?? double.MaxValue)
                .ThenBy(c => c.Set, StringComparer.Ordinal).ThenBy(c => c.Is.Name, StringComparer.Ordinal),
        ];
    }

    /// <summary>A margin counts as it is shown: what differs in later places nobody sees.</summary>
    private static bool IsOther(LinkKind was, LinkKind now) => was.Verdict != now.Verdict || was.MarginWords != now.MarginWords;

    /// <summary>Links by what stays when others are added: their set, the devices at both ends, and which of those alike.</summary>
    private static IEnumerable<((string, string, string, int) Key, int Link)> Numbered(DesignedPlan designed)
    {
        var (plan, counts) = (designed.Plan, new Dictionary<(string, string, string), int>());
        string[] names = [.. Enumerable.Range(0, plan.Devices.Count).Select(plan.Devices.Name)];
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var ends = (plan.Statements[plan.Links.Statement(link)].Name, names[plan.Links.FromDevice(link)],
                names[plan.Links.ToDevice(link)]);
            var number = counts[ends] = counts.GetValueOrDefault(ends) + 1;
            yield return ((ends.Item1, ends.Item2, ends.Item3, number), link);
        }
    }
}
