using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Fabrics;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Binding;
using Lanewright.Model.Wanted;
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
        var lines = new Lazy<LineBook>(() => LineBook.Of(plan));
        var parts = PartsTally.Of(plan, design, lines);
        var load = LoadStudy.Of(plan, design);
        progress?.Invoke("judging");
        var glance = new Lazy<SizingAnswer?>(() => plan.Wanted is { } wanted ? FabricStudy.Glance(wanted, ContextOf(plan)) : null);
        var judgement = new Judgement(plan, design, parts, load, glance, findings) { Lines = lines };
        var waiting = judgement.IsWhole ? [] : RuleBook.All.Where(r => r.NeedsWholePlan).ToImmutableArray();
        foreach (var rule in RuleBook.All.Except(waiting)) rule.Judge(judgement);
        var sorted = findings.ToSorted();
        var designed = new DesignedPlan(plan, design, parts, load, sorted, SizingOf(plan)) { Lines = lines };
        return new JudgedPlan { Designed = designed, Findings = sorted, RulesWaiting = waiting.Length };
    }

    /// <summary>Answers what fabric to buy.</summary>
    /// <param name="files">The door to the plan's files.</param>
    /// <param name="path">The plan's first file; null when the question is all there is.</param>
    /// <param name="question">A text in the plan language whose section <c>wanted</c> overrides the plan's, key by key; null when the plan
    /// says everything.</param>
    /// <param name="progress">Told of each step before it begins; null when nobody waits.</param>
    public static SizedPlan Size(PlanFiles files, string? path, SourceText? question, Action<string>? progress = null)
    {
        var findings = new FindingSink();
        progress?.Invoke("reading and binding");
        var plan = PlanBinder.Bind(files, path, findings, question);
        if (plan?.Wanted is not { } wanted || findings.ErrorCount > 0) return new SizedPlan(plan, null, findings.ToSorted());
        var study = FabricStudy.Of(wanted, ContextOf(plan), shape => progress?.Invoke($"sizing: {FabricShapes.Title(shape)}"));
        return new SizedPlan(plan, study, findings.ToSorted());
    }

    /// <summary>The documents of a compiled plan.</summary>
    public static ImmutableArray<Deliverable> Deliver(JudgedPlan judged) => DeliverySet.Of(judged);

    private static Lazy<FabricStudy?> SizingOf(Plan plan) =>
        new(() => plan.Wanted is { } wanted ? FabricStudy.Of(wanted, ContextOf(plan)) : null);

    private static FinderContext ContextOf(Plan plan) => new(plan.Standards, plan.Catalogue, plan.Policy);
}
