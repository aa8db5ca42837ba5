using System.Collections.Immutable;
using Lanewright.Engineering;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Load;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>A plan with what is computed of it: rules and documents read the same.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Design">How its links are made.</param>
/// <param name="Parts">What it needs.</param>
/// <param name="Load">What its networks carry.</param>
/// <param name="Books">What is worked out of it when first asked for.</param>
public abstract record WorkedPlan(
    Plan Plan, LinkDesign Design, ImmutableArray<PartLine> Parts, LoadStudy Load, PlanBooks Books)
{
    /// <summary>Which ways cables go.</summary>
    public Lazy<PathwayBook> Pathways => Books.Pathways;

    /// <summary>In what bundles and in what order cables are pulled.</summary>
    public Lazy<PullPlan> Pulls => Books.Pulls;

    /// <summary>What trunks between panels carry.</summary>
    public Lazy<PlantBook> Plant => Books.Plant;

    /// <summary>How lines between sites are built.</summary>
    public Lazy<LineBook> Lines => Books.Lines;

    /// <summary>What stands in the racks.</summary>
    public Lazy<RackBook> Racks => Books.Racks;

    /// <summary>What the strips of feeds carry in them.</summary>
    public ImmutableArray<StripLoad> Strips => Books.Strips.Value;
}
