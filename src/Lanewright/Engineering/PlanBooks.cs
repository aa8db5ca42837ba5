using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Model;

namespace Lanewright.Engineering;

/// <summary>What several readers of one designed plan ask for: each book is worked out once, when somebody first opens it.</summary>
public sealed class PlanBooks
{
    /// <summary>Opens nothing yet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="lines">How its lines between sites are built.</param>
    public PlanBooks(Plan plan, LinkDesign design, Lazy<LineBook> lines)
    {
        Lines = lines;
        Plant = new(() => PlantBook.Of(plan, design));
        TrunkSizes = new(() => TrunkSizing.Of(plan, Plant.Value, null));
        TrunkBudgets = new(() => [.. Plant.Value.Trunks.Select(t => TrunkBudget.Of(plan, design, Plant.Value, t))]);
        Pathways = new(() => PathwayBook.Of(plan, design, Plant));
        Pulls = new(() => PullPlan.Of(plan, design, Pathways.Value, Plant, plan.LinePorts.IsEmpty ? [] : lines.Value.Cords));
        Racks = new(() => RackBook.Of(plan, design, lines));
        Strips = new(() => StripLoads.Of(Racks.Value));
    }

    /// <summary>How lines between sites are built.</summary>
    public Lazy<LineBook> Lines { get; }

    /// <summary>What trunks between panels carry.</summary>
    public Lazy<PlantBook> Plant { get; }

    /// <summary>Which trunks would do, with the growth that the plan states.</summary>
    public Lazy<TrunkSizing> TrunkSizes { get; }

    /// <summary>What the links through each group of trunks leave for it, in the order of the groups; null where none has a
    /// limit.</summary>
    public Lazy<ImmutableArray<TrunkBudget?>> TrunkBudgets { get; }

    /// <summary>Which ways cables go.</summary>
    public Lazy<PathwayBook> Pathways { get; }

    /// <summary>In what bundles and in what order cables are pulled.</summary>
    public Lazy<PullPlan> Pulls { get; }

    /// <summary>What stands in the racks.</summary>
    public Lazy<RackBook> Racks { get; }

    /// <summary>What the strips of feeds carry in them.</summary>
    public Lazy<ImmutableArray<StripLoad>> Strips { get; }
}
