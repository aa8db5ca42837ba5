using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Fabrics;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Load;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>A plan that could be read, with everything that was computed from it: what most documents are views of.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Design">How its links are made.</param>
/// <param name="Parts">What it needs.</param>
/// <param name="Load">What its networks carry.</param>
/// <param name="Findings">Everything there is to say about it, in the order of the plan.</param>
/// <param name="Sizing">What fabric to buy, where the plan wants one: worked out when first asked for.</param>
public sealed record DesignedPlan(
    Plan Plan, LinkDesign Design, ImmutableArray<PartLine> Parts, LoadStudy Load, ImmutableArray<Finding> Findings,
    Lazy<FabricStudy?> Sizing)
{
    /// <summary>Which ways cables go.</summary>
    public Lazy<PathwayBook> Pathways => pathways ??= new(() => PathwayBook.Of(Plan, Design, Plant));

    /// <summary>In what bundles and in what order cables are pulled.</summary>
    public Lazy<PullPlan> Pulls => pulls ??= new(() => PullPlan.Of(Plan, Design, Pathways.Value, Plant));

    /// <summary>What trunks between panels carry.</summary>
    public Lazy<PlantBook> Plant { get; } = new(() => PlantBook.Of(Plan, Design));

    /// <summary>How lines between sites are built.</summary>
    public required Lazy<LineBook> Lines { get; init; }

    /// <summary>What stands in the racks.</summary>
    public Lazy<RackBook> Racks => racks ??= new(() => RackBook.Of(Plan, Design, Lines));

    private Lazy<RackBook>? racks;
    private Lazy<PathwayBook>? pathways;
    private Lazy<PullPlan>? pulls;
}
