using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Placement;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Where things should stand, and what distance costs.</summary>
/// <param name="Groups">The groups that were asked about.</param>
/// <param name="Rows">Orders of rows alike.</param>
/// <param name="Steps">What a link of each kind costs by its length.</param>
public sealed record PlacementAnswer(
    ImmutableArray<GroupPlacement> Groups, ImmutableArray<RowOrder> Rows,
    ImmutableArray<(LinkClass Link, ImmutableArray<MediaStep> Steps)> Steps)
{
    /// <summary>Groups that no place was found for.</summary>
    public ImmutableArray<PlacelessGroup> Placeless { get; private init; } = [];

    /// <summary>Why nothing is told of any group; empty where something is.</summary>
    public string WhyNone => Groups.IsEmpty && Placeless.IsEmpty ? PlacementWords.NoHighest : "";

    /// <summary>Lengths that are looked at in any case.</summary>
    private static readonly Length Usual = Length.FromMetres(60);

    /// <summary>Answers for a plan.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="groups">The groups; null for the highest switches.</param>
    /// <param name="allows">Racks they may stand in.</param>
    public static PlacementAnswer Of(DesignedPlan designed, ImmutableArray<DeviceGroup>? groups, Func<Rack, bool> allows)
    {
        var study = new PlacementStudy(designed.Plan, designed.Design, designed.Racks.Value);
        var asked = groups ?? study.HighestGroups(designed.Load.Networks);
        var found = asked.Select(g => study.Of(g, allows)).ToList();
        return new PlacementAnswer([.. found.Select(f => f.Placement).OfType<GroupPlacement>()], study.Rows(), study.Steps(Usual))
        {
            Placeless = [.. found.Select(f => f.Placeless).OfType<PlacelessGroup>()],
        };
    }
}
