using Lanewright.Engineering.Choice;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>One group of trunks on the way of links.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="IsTurned">Whether the way enters them at their far panel.</param>
/// <param name="Length">Length of each trunk; null when it cannot be told.</param>
public sealed record TrunkLeg(TrunkGroup Trunk, bool IsTurned, Length? Length)
{
    /// <summary>The panel at which the way enters.</summary>
    public int NearPanel => IsTurned ? Trunk.To : Trunk.From;

    /// <summary>The panel at which it leaves.</summary>
    public int FarPanel => IsTurned ? Trunk.From : Trunk.To;

    /// <summary>What the front of the panel shows where the way enters.</summary>
    public ModuleOpening NearOpening(StandardsLibrary standards) => Opening(standards, IsTurned);

    /// <summary>What the front of the panel shows where it leaves.</summary>
    public ModuleOpening FarOpening(StandardsLibrary standards) => Opening(standards, !IsTurned);

    /// <summary>A cable of which nothing is said has the pins that are usual at cords.</summary>
    private ModuleOpening Opening(StandardsLibrary standards, bool isFar)
    {
        var connector = Trunk.ConnectorAt(isFar);
        var pins = Trunk.CassetteAt(isFar) is not null ? ""
            : Trunk.PinsAt(isFar) is { Length: > 0 } said ? said
            : standards.Connector(connector)?.Word("cord-pins") ?? "";
        return new ModuleOpening(connector, Trunk.PolishAt(isFar), 1) { Pins = pins };
    }
}
