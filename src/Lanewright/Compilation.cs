using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright;

/// <summary>The whole program: read, bind, compute, judge, deliver.</summary>
public static class Compilation
{
    /// <summary>Compiles a plan.</summary>
    /// <param name="files">The door to its files.</param>
    /// <param name="path">Its first file.</param>
    /// <param name="progress">Told of each step before it begins; null when nobody waits.</param>
    public static JudgedPlan Of(PlanFiles files, string path, Action<string>? progress = null)
    {
        var findings = new FindingSink();
        progress?.Invoke("reading and binding");
        if (PlanBinder.Bind(files, path, findings) is not { } plan) return new JudgedPlan { Findings = findings.ToSorted() };
        progress?.Invoke($"computing {plan.Links.Count} links");
        var design = LinkDesign.Of(plan);
        var parts = PartsTally.Of(plan, design);
        var load = LoadStudy.Of(plan, design);
        progress?.Invoke("judging");
        var judgement = new Judgement(plan, design, parts, load, findings);
        foreach (var rule in RuleBook.All) rule.Judge(judgement);
        var sorted = findings.ToSorted();
        return new JudgedPlan { Designed = new DesignedPlan(plan, design, parts, load, sorted), Findings = sorted };
    }

    /// <summary>The documents of a compiled plan.</summary>
    public static ImmutableArray<Deliverable> Deliver(JudgedPlan judged) => DeliverySet.Of(judged);
}
