using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Binding;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright;

/// <summary>The whole program: read, bind, compute, judge. Deliverables are written from what stands here.</summary>
public sealed record Compilation
{
    private Compilation()
    {
    }

    /// <summary>The plan; null when nothing could be made of its file.</summary>
    public Plan? Plan { get; private init; }

    /// <summary>How its links are made; null without a plan.</summary>
    public LinkDesign? Design { get; private init; }

    /// <summary>What it needs.</summary>
    public ImmutableArray<PartLine> Parts { get; private init; } = [];

    /// <summary>Everything there is to say about it, in the order of the plan.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>Compiles a plan.</summary>
    /// <param name="files">The door to its files.</param>
    /// <param name="path">Its first file.</param>
    /// <param name="progress">Told of each step before it begins; null when nobody waits.</param>
    public static Compilation Of(PlanFiles files, string path, Action<string>? progress = null)
    {
        var findings = new FindingSink();
        progress?.Invoke("reading and binding");
        if (PlanBinder.Bind(files, path, findings) is not { } plan) return new Compilation { Findings = findings.ToSorted() };
        progress?.Invoke($"computing {plan.Links.Count} links");
        var design = LinkDesign.Of(plan);
        var parts = PartsTally.Of(plan, design);
        progress?.Invoke("judging");
        var judgement = new Judgement(plan, design, parts, findings);
        foreach (var rule in RuleBook.All) rule.Judge(judgement);
        return new Compilation { Plan = plan, Design = design, Parts = parts, Findings = findings.ToSorted() };
    }
}
