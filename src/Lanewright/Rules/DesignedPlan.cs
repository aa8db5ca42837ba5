using System.Collections.Immutable;
using Lanewright.Engineering;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Fabrics;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>A plan that could be read, with everything that was computed from it: what most documents are views of.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Design">How its links are made.</param>
/// <param name="Parts">What it needs.</param>
/// <param name="Load">What its networks carry.</param>
/// <param name="Findings">Everything there is to say about it, in the order of the plan.</param>
/// <param name="Books">What is worked out of it when first asked for.</param>
/// <param name="Sizing">What fabric to buy, where the plan wants one: worked out when first asked for.</param>
public sealed record DesignedPlan(
    Plan Plan, LinkDesign Design, ImmutableArray<PartLine> Parts, LoadStudy Load, ImmutableArray<Finding> Findings,
    PlanBooks Books, Lazy<FabricStudy?> Sizing) : WorkedPlan(Plan, Design, Parts, Load, Books);
