using System.Collections.Immutable;
using System.Text;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Puts classes that would be drawn alike together.</summary>
public static class LinkWays
{
    /// <summary>The ways of a design, in the order of their first classes.</summary>
    public static ImmutableArray<LinkWay> Of(Plan plan, LinkDesign design)
    {
        var firsts = FirstLinks(plan, design);
        var used = UsedPorts(plan, design);
        var byKey = new Dictionary<string, int>(StringComparer.Ordinal);
        var members = new List<ImmutableArray<WayMember>.Builder>();
        foreach (var choice in design.Choices)
        {
            for (var share = 0; share < choice.Shares.Length; share++)
            {
                var member = new WayMember(Identifiers.Class(choice.Class.Index, share), choice, share,
                    firsts.GetValueOrDefault((choice.Class.Index, share), choice.Class.FirstLink),
                    used.GetValueOrDefault((choice.Class.Index, share), 1));
                var key = Key(choice.Class, member.Solution);
                if (!byKey.TryGetValue(key, out var at))
                {
                    byKey[key] = at = members.Count;
                    members.Add(ImmutableArray.CreateBuilder<WayMember>());
                }
                members[at].Add(member);
            }
        }
        return [.. members.Select(m => new LinkWay(m.ToImmutable()))];
    }

    /// <summary>The ways most worth drawing: what fails, then what cannot be proved, then every kind once before the many lengths of
    /// one kind, and of those what most links are made in; given back in order of name.</summary>
    public static ImmutableArray<LinkWay> MostTelling(ImmutableArray<LinkWay> ways, int most)
    {
        if (ways.Length <= most) return ways;
        var kept = ways
            .Select((way, index) => (Way: way, Index: index))
            .GroupBy(w => (w.Way.Solution.TypeName, w.Way.Solution.MediumName, w.Way.Class.Shape))
            .SelectMany(kind => kind.OrderByDescending(w => w.Way.Links).ThenBy(w => w.Index).Select((w, rank) => (w.Way, w.Index, rank)))
            .OrderByDescending(w => w.Way.Solution.Verdict)
            .ThenBy(w => w.Way.Solution.Verdict == Verdict.Pass ? w.rank : 0)
            .ThenByDescending(w => w.Way.Links)
            .ThenBy(w => w.Index)
            .Take(most)
            .OrderBy(w => w.Index);
        return [.. kept.Select(w => w.Way)];
    }

    /// <summary>The first link of each share of each class.</summary>
    private static Dictionary<(int Class, int Share), int> FirstLinks(Plan plan, LinkDesign design)
    {
        var firsts = new Dictionary<(int, int), int>();
        for (var link = 0; link < plan.Links.Count; link++) firsts.TryAdd((design.ClassOf(link), design.ShareOf(link)), link);
        return firsts;
    }

    /// <summary>For each share of each class that splits cages, how many ports of such a cage have links: a cage split eight ways may
    /// have four.</summary>
    private static Dictionary<(int Class, int Share), int> UsedPorts(Plan plan, LinkDesign design)
    {
        var ofCage = new Dictionary<(int Device, short Cage), int>();
        for (var link = 0; link < plan.Links.Count; link++)
            if (SplitCage(plan, design, link) is { } cage) ofCage[cage] = ofCage.GetValueOrDefault(cage) + 1;
        var used = new Dictionary<(int, int), int>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (SplitCage(plan, design, link) is not { } cage) continue;
            var share = (design.ClassOf(link), design.ShareOf(link));
            used[share] = Math.Max(used.GetValueOrDefault(share), ofCage[cage]);
        }
        return used;
    }

    /// <summary>The split cage a drawing of the link begins at; null when no cage is split.</summary>
    private static (int Device, short Cage)? SplitCage(Plan plan, LinkDesign design, int link) =>
        design.Choices[design.ClassOf(link)].Class.Shape switch
        {
            FanShape.Single => null,
            FanShape.ToEnd => (plan.Links.ToDevice(link), plan.Links.ToPort(link).Cage),
            _ => (plan.Links.FromDevice(link), plan.Links.FromPort(link).Cage),
        };

    /// <summary>Everything a drawing shows of a way.</summary>
    private static string Key(LinkClass link, Solution solution)
    {
        var key = new StringBuilder(256);
        Add(key, solution.Name, solution.MediumName, solution.TypeName, link.Statement.Rate.ToString());
        Add(key, link.Shape.ToString(), Checks.Word(solution.Verdict), Marks.Name(solution.Mark));
        Add(key, link.Statement.IsExisting ? "existing" : "", solution.FromFec, solution.ToFec, solution.Autonegotiates ? "an" : "");
        Add(key, solution.FromApplication?.ToString() ?? "", solution.ToApplication?.ToString() ?? "", solution.FarCord?.Name ?? "");
        foreach (var end in new[] { link.From, link.To })
            Add(key, end.Cage.FormFactor.Name, end.Cage.LanesText, Numerals.Whole(end.Cage.Lanes), Numerals.Whole(end.Ways));
        if (solution.Channel is { } c)
        {
            Add(key, Numerals.Whole(c.Connections), Numerals.Exact(c.ConnectionLoss.Value.Value), Numerals.Whole(c.Splices),
                Numerals.Exact(c.SpliceLoss.Value.Value));
            Add(key, Numerals.Exact(c.Attenuator.Value), Numerals.Exact(c.AgeingMargin.Value), c.MeasuredLoss?.ToString() ?? "",
                c.Attenuation?.Value.ToString() ?? "");
        }
        foreach (var check in solution.Checks.Where(c => LadderChecks.Contains(c.Name)))
            Add(key, check.Name, Checks.Word(check.Verdict), Exact(check.Value), Exact(check.Limit), check.End);
        foreach (var check in solution.Checks.Where(c => c.Verdict != Verdict.Pass && !c.IsAdvice)) Add(key, LostBy.Describe(check));
        return key.ToString();
    }

    /// <summary>The comparisons a loss ladder shows.</summary>
    private static readonly ImmutableArray<string> LadderChecks =
        [CheckNames.ChannelLoss, CheckNames.PowerBudget, CheckNames.Overload, CheckNames.CopperLoss];

    private static string Exact(double? value) => value is { } number ? Numerals.Exact(number) : "";

    private static void Add(StringBuilder key, params ReadOnlySpan<string> parts)
    {
        foreach (var part in parts) key.Append(part).Append('\u001F');
    }
}
