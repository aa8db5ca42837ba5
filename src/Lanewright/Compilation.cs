using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Engineering;
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
    /// <param name="progress">Told of each step before it begins, also of what is worked out later when somebody asks for it; null when
    /// nobody waits.</param>
    /// <param name="earlier">What was found for earlier states of the plan; null when there were none. It makes no difference to the
    /// result.</param>
    /// <param name="cancel">Breaks the compilation off, and later whatever is still being worked out from its result.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static JudgedPlan Of(
        PlanFiles files, string path, Action<string>? progress = null, EarlierWork? earlier = null, CancellationToken cancel = default)
    {
        var work = earlier ?? new EarlierWork();
        lock (work.Turn)
        {
            work.NextRound();
            return Of(work.Texts.Over(files), path, work, step =>
            {
                cancel.ThrowIfCancellationRequested();
                progress?.Invoke(step);
            }, cancel);
        }
    }

    /// <summary>Answers what fabric to buy.</summary>
    /// <param name="files">The door to the plan's files.</param>
    /// <param name="path">The plan's first file; null when the question is all there is.</param>
    /// <param name="question">A text in the plan language whose section <c>wanted</c> overrides the plan's, key by key; null when the plan
    /// says everything.</param>
    /// <param name="progress">Told of each step before it begins; null when nobody waits.</param>
    /// <param name="cancel">Breaks it off, and later whatever is still being worked out from its result.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static SizedPlan Size(
        PlanFiles files, string? path, SourceText? question, Action<string>? progress = null, CancellationToken cancel = default)
    {
        var findings = new FindingSink();
        progress?.Invoke("reading and binding");
        var plan = PlanBinder.Bind(files, path, findings, question);
        if (plan?.Wanted is not { } wanted || findings.ErrorCount > 0) return new SizedPlan(plan, null, findings.ToSorted());
        var study = FabricStudy.Of(wanted, ContextOf(plan) with { Cancel = cancel }, shape => progress?.Invoke(SizingStep(shape)));
        return new SizedPlan(plan, study, findings.ToSorted());
    }

    /// <summary>The documents of a compiled plan.</summary>
    public static ImmutableArray<Deliverable> Deliver(JudgedPlan judged) => DeliverySet.Of(judged);

    private static JudgedPlan Of(PlanFiles files, string path, EarlierWork earlier, Action<string> step, CancellationToken cancel)
    {
        var findings = new FindingSink();
        step("reading and binding");
        if (PlanBinder.Bind(files, path, findings, null, earlier.Readings) is not { } plan)
            return new JudgedPlan { Findings = findings.ToSorted() };
        var context = ContextOf(plan) with { Cancel = cancel };
        var glance = GlanceOf(plan.Wanted, context, findings.ErrorCount == 0);
        step($"computing {plan.Links.Count} links");
        var lines = new Lazy<LineBook>(() => LineBook.Of(plan));
        var design = LinkDesign.Of(plan, lines, earlier.Solutions, cancel);
        var books = new PlanBooks(plan, design, lines);
        var parts = PartsTally.Of(plan, design, lines, books.Plant);
        var load = LoadStudy.Of(plan, design, books, earlier.Loads, cancel);
        step("judging");
        var judgement = new Judgement(plan, design, parts, load, books, glance, findings);
        var waiting = judgement.IsWhole ? [] : RuleBook.All.Where(r => r.NeedsWholePlan).ToImmutableArray();
        foreach (var rule in RuleBook.All.Except(waiting))
        {
            cancel.ThrowIfCancellationRequested();
            rule.Judge(judgement);
        }
        var sorted = findings.ToSorted();
        var designed = new DesignedPlan(plan, design, parts, load, sorted, books, SizingOf(plan.Wanted, context, step));
        return new JudgedPlan { Designed = designed, Findings = sorted, RulesWaiting = waiting.Length };
    }

    /// <summary>The short look at what is wanted depends on nothing that is computed of the links, so it goes on beside them; of a plan
    /// with faults nobody asks for it.</summary>
    private static Lazy<ImmutableArray<ShapeLost>?> GlanceOf(WantedFabric? wanted, FinderContext context, bool isWhole)
    {
        if (wanted is null || !isWhole) return new((ImmutableArray<ShapeLost>?)null);
        var looking = Task.Run(() => FabricStudy.Glance(wanted, context), context.Cancel);
        return new(() => looking.GetAwaiter().GetResult());
    }

    private static Lazy<FabricStudy?> SizingOf(WantedFabric? wanted, FinderContext context, Action<string> step) =>
        new(() => wanted is null ? null : FabricStudy.Of(wanted, context, shape => step(SizingStep(shape))));

    private static string SizingStep(FabricShape shape) => $"sizing: {FabricShapes.Title(shape)}";

    private static FinderContext ContextOf(Plan plan) => new(plan.Standards, plan.Catalogue, plan.Policy);
}
