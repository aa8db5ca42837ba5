using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One complete, priced answer to what is wanted. Counts are those of the start; what grows has a value over the years beside
/// it.</summary>
public sealed record FabricOption
{
    /// <summary>What it looks like.</summary>
    public FabricShape Shape => Needs.Shape;

    /// <summary>Tiers of switches.</summary>
    public int Tiers => Needs.Tiers;

    /// <summary>Switches that hosts are plugged into.</summary>
    public required int Leaves { get; init; }

    /// <summary>Switches of the second tier: spines, or aggregation switches of all pods.</summary>
    public required int Spines { get; init; }

    /// <summary>Switches of the third tier.</summary>
    public required int Cores { get; init; }

    /// <summary>Hosts.</summary>
    public required int Hosts { get; init; }

    /// <summary>Ports of hosts.</summary>
    public required int HostPorts { get; init; }

    /// <summary>Links between switches.</summary>
    public required int FabricLinks { get; init; }

    /// <summary>Modules in use.</summary>
    public required long Modules { get; init; }

    /// <summary>Cables: a fan-out is one.</summary>
    public required long Cables { get; init; }

    /// <summary>Price of what is bought at the start.</summary>
    public Money Price => Needs.Price;

    /// <summary>Price over the years: all purchases and energy.</summary>
    public Money PriceOverYears => Needs.PriceOverYears;

    /// <summary>What the start costs, energy at nothing.</summary>
    public required FabricCost Cost { get; init; }

    /// <summary>What the years cost.</summary>
    public required FabricCost CostOverYears { get; init; }

    /// <summary>Energy over the years, losses and cooling included.</summary>
    public required Energy EnergyOverYears { get; init; }

    /// <summary>Power of switches and modules under a usual load, at the start.</summary>
    public required Watts Watts { get; init; }

    /// <summary>Rack units of all switches, at the start.</summary>
    public required int RackUnits { get; init; }

    /// <summary>No design of this shape that keeps the wishes costs less over the years.</summary>
    public required Money LowerBound { get; init; }

    /// <summary>How much less the best design of this shape could cost at most, as a part of what this one costs.</summary>
    public required Share Gap { get; init; }

    /// <summary>The switches.</summary>
    public required ImmutableArray<SwitchUse> Switches { get; init; }

    /// <summary>How each tier reaches the next.</summary>
    public required ImmutableArray<TierUplinks> Uplinks { get; init; }

    /// <summary>Switches and chassis by model, then their cards, each in natural order.</summary>
    public required ImmutableArray<FabricPart> SwitchesByModel { get; init; }

    /// <summary>Modules by model, in natural order.</summary>
    public required ImmutableArray<FabricPart> ModulesByModel { get; init; }

    /// <summary>Cables by model and length, in natural order.</summary>
    public required ImmutableArray<FabricPart> CablesByModel { get; init; }

    /// <summary>Small parts by model, in natural order.</summary>
    public required ImmutableArray<FabricPart> SmallParts { get; init; }

    /// <summary>Hosts that can be added to those of the start, of the most numerous kind, before the tier above the leaves is
    /// full.</summary>
    public int GrowthLeft => Room.Left;

    /// <summary>What that is worked out from.</summary>
    public required GrowthRoom Room { get; init; }

    /// <summary>What the watts are the sum of.</summary>
    public required ImmutableArray<FabricDraw> Draws { get; init; }

    /// <summary>The years, from the start to the end of the last.</summary>
    public required ImmutableArray<FabricYear> Years { get; init; }

    /// <summary>What still serves when lanes become one step faster.</summary>
    public required NextLaneRate NextLaneRate { get; init; }

    /// <summary>What it asks for, wish by wish.</summary>
    public required FabricNeeds Needs { get; init; }

    /// <summary>Where everything stands and how it is linked.</summary>
    public required FabricLayout Layout { get; init; }
}
