using Lanewright.Engineering.Pathways;

namespace Lanewright.Rules.Pathways;

/// <summary>Links, or trunks that links are patched through, of a side for which no way leads along pathways of that side.</summary>
internal sealed class SideMissing() : Rule("LW4108", nameof(SideMissing))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        var (ways, sides) = (judgement.Design.Lengths.Ways, plan.Statements.Select(s => s.Side).ToArray());
        if (sides.All(s => s.Length == 0) && plan.Trunks.All(t => t.Side.Length == 0)) return;
        var lost = new SortedDictionary<int, (int Link, int Count)>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var (from, to) = (plan.Devices.RackIndex(plan.Links.FromDevice(link)), plan.Devices.RackIndex(plan.Links.ToDevice(link)));
            var statement = plan.Links.Statement(link);
            if (sides[statement].Length == 0 || from < 0 || to < 0 || from == to) continue;
            if (!plan.Statements[statement].Through.IsEmpty) continue;
            if (!IsLost(plan.Links.FromDevice(link), plan.Links.ToDevice(link), sides[statement])) continue;
            lost[statement] = (lost.TryGetValue(statement, out var known) ? known.Link : link, known.Count + 1);
        }
        foreach (var (index, (link, count)) in lost)
        {
            var statement = plan.Statements[index];
            judgement.Add(this, statement.Span,
                $"no way in pathways of side '{statement.Side}' leads from {plan.Devices.Name(plan.Links.FromDevice(link))} to "
                + $"{plan.Devices.Name(plan.Links.ToDevice(link))}; give trays and routes between them this side, or join them by one "
                + "without a side",
                statement.Name, count);
        }
        foreach (var trunk in plan.Trunks.Where(t => t.Side.Length > 0 && IsLost(t.From, t.To, t.Side)))
            judgement.Add(this, trunk.Span,
                $"no way in pathways of side '{trunk.Side}' leads from {plan.Devices.Name(trunk.From)} to "
                + $"{plan.Devices.Name(trunk.To)} for the trunks '{trunk.Name}'; give trays and routes between them this side, or "
                + "join them by one without a side",
                trunk.Name, trunk.Count);

        bool IsLost(int from, int to, string name)
        {
            var (a, b) = (plan.Devices.RackIndex(from), plan.Devices.RackIndex(to));
            return a >= 0 && b >= 0 && a != b && (ways?.Net.SideOf(name) is not > 0
                || ways.Between(WayQuestion.Between(a, b, ways.Net.SideOf(name))) is null);
        }
    }
}
