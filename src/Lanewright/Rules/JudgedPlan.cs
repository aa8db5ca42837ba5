using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Findings;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>What became of the files of a plan: findings in any case, and the designed plan where they could be read.</summary>
public sealed record JudgedPlan
{
    /// <summary>The plan with what was computed from it; null when nothing could be made of its file.</summary>
    public DesignedPlan? Designed { get; init; }

    /// <summary>Everything there is to say about it, in the order of the plan.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Rules that did not speak, since reading and binding found errors.</summary>
    public int RulesWaiting { get; init; }

    /// <summary>The plan, if there is one.</summary>
    public Plan? Plan => Designed?.Plan;

    /// <summary>How its links are made, if there is a plan.</summary>
    public LinkDesign? Design => Designed?.Design;

    /// <summary>What it needs; nothing without a plan.</summary>
    public ImmutableArray<PartLine> Parts => Designed?.Parts ?? [];

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
