using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Findings;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>A plan with everything that was computed from it and found in it: what documents are views of.</summary>
public sealed record JudgedPlan
{
    /// <summary>The plan; null when nothing could be made of its file.</summary>
    public Plan? Plan { get; init; }

    /// <summary>How its links are made; null without a plan.</summary>
    public LinkDesign? Design { get; init; }

    /// <summary>What it needs.</summary>
    public ImmutableArray<PartLine> Parts { get; init; } = [];

    /// <summary>Everything there is to say about it, in the order of the plan.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
