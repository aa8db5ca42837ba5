using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Model.Catalogues;

/// <summary>A cable with its ends on: DAC, AEC or AOC.</summary>
public sealed record AssemblyModel : CableItem
{
    /// <summary>DAC, AEC or AOC.</summary>
    public required CableMedium Medium { get; init; }

    /// <summary>The end with all lanes.</summary>
    public required FormFactor Near { get; init; }

    /// <summary>The end of each leg.</summary>
    public required FormFactor Far { get; init; }

    /// <summary>For passive copper: the interface type of each leg.</summary>
    public CopperType? Type { get; init; }

    /// <summary>For active cables: the electrical interface each leg shows at the near end.</summary>
    public HostInterface? NearInterface { get; init; }

    /// <summary>For active cables: the electrical interface each leg shows at its far end.</summary>
    public HostInterface? FarInterface { get; init; }

    /// <summary>American wire gauge of copper; 0 for glass.</summary>
    public int Gauge { get; init; }

    /// <summary>Power of the near end.</summary>
    public Watts NearPower { get; init; }

    /// <summary>Power of each far end.</summary>
    public Watts FarPower { get; init; }

    /// <summary>Smallest bend the maker allows; null when not said, and then the rule for its kind holds.</summary>
    public Length? BendRadius { get; init; }

    /// <summary>How far the plug stands out of the cage.</summary>
    public Length Plug { get; init; }

    /// <summary>What each leg runs, by name.</summary>
    public string TypeName => Type?.Name ?? NearInterface?.Name ?? "";

    /// <summary>Rate of each leg.</summary>
    public BitRate LegRate => Type?.Rate ?? NearInterface?.Rate ?? default;

    /// <summary>The electrical interface an active cable shows at an end.</summary>
    /// <exception cref="InvalidOperationException">The cable is passive.</exception>
    public HostInterface Shows(bool isNear) =>
        (isNear ? NearInterface : FarInterface) ?? throw new InvalidOperationException($"{Name} is passive and shows no interface");
}
